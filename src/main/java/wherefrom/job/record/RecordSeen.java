package wherefrom.job.record;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wherefrom.inspection.Check;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.Days;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;

/**
 * What was seen, in the person's words: every answer that was no plain pass, what was passed on
 * castings and shafts, and every note. The plain passes of a part stand in its own row.
 */
final class RecordSeen {
  private static final EntryFold<RecordSeen> READS =
      EntryFold.<RecordSeen>none()
          .at(LookRecorded.class, RecordSeen::take)
          .at(FeatureLooked.class, RecordSeen::take)
          .at(NoteAdded.class, RecordSeen::take);

  /** The latest answer to a check. */
  private record Answer(String check, Look look, String note, Instant time) {}

  private final EngineJob job;
  private final Days days;

  /** Which check of what. */
  private record Asked(String where, String check) {}

  private final Map<Asked, Answer> parts = new LinkedHashMap<>();
  private final Map<Asked, Answer> features = new LinkedHashMap<>();
  private final List<RecordSection.Row> notes = new ArrayList<>();

  RecordSeen(OpenJob open) {
    this.job = open.state();
    this.days = open.days();
    job.standing().forEach(logged -> READS.take(this, logged));
  }

  private void take(LookRecorded look, LoggedEntry logged) {
    put(parts, words(look.item()), look.check(), look.look(), look.note(), logged.time());
  }

  private void take(FeatureLooked look, LoggedEntry logged) {
    String words = Subject.find(look.subject()).map(this::words).orElse(look.subject());
    put(features, words, look.check(), look.look(), look.note(), logged.time());
  }

  private void take(NoteAdded note, LoggedEntry logged) {
    String about = note.item() == 0 ? "the job" : words(note.item());
    notes.add(row(false, about, "note", "", note.text(), day(logged.time())));
  }

  private static void put(
      Map<Asked, Answer> all, String words, String check, Look look, String note, Instant time) {
    all.put(new Asked(words, check), new Answer(check, look, note, time));
  }

  private String words(int item) {
    return job.getPart(item).part().words();
  }

  private String words(Subject subject) {
    return subject.match(
        part -> words(part.item()), Subject.AFeature::words, Subject.Beside::words);
  }

  RecordSection section() {
    List<RecordSection.Row> rows = new ArrayList<>();
    features.forEach((asked, answer) -> told(asked, answer, rows));
    parts.forEach((asked, answer) -> told(asked, answer, rows));
    passed(rows);
    rows.addAll(notes);
    return new RecordSection(
        RecordTable.SEEN,
        List.of("where", "test", "answer", "note", "when"),
        rows,
        "Nothing was noted.");
  }

  private static boolean isPlainPass(Answer answer) {
    return answer.look() == Look.PASS && answer.note().isEmpty();
  }

  private void told(Asked asked, Answer answer, List<RecordSection.Row> rows) {
    if (answer.look() != Look.NOT_LOOKED && !isPlainPass(answer)) {
      rows.add(
          row(
              answer.look() != Look.PASS,
              asked.where(),
              title(answer.check()),
              answer.look().word(),
              answer.note(),
              day(answer.time())));
    }
  }

  /** One row a test: sixteen good lobes are one thing to read. */
  private void passed(List<RecordSection.Row> rows) {
    Map<String, Integer> passed = new LinkedHashMap<>();
    features.values().stream()
        .filter(RecordSeen::isPlainPass)
        .forEach(answer -> passed.merge(answer.check(), 1, Integer::sum));
    passed.forEach(
        (check, many) -> {
          String of =
              Checks.find(check)
                  .flatMap(found -> Feature.find(found.of()))
                  .map(Feature::word)
                  .orElse(check);
          rows.add(row(false, many + " × " + of, title(check), Look.PASS.word(), "", ""));
        });
  }

  private static String title(String check) {
    return Checks.find(check).map(Check::title).orElse(check);
  }

  private String day(Instant time) {
    return days.day(time);
  }

  private static RecordSection.Row row(boolean open, String... cells) {
    return new RecordSection.Row(List.of(cells), open);
  }
}
