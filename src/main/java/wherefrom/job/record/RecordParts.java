package wherefrom.job.record;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.Days;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryFold;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.DecisionEntry;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.SetDecided;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordTable;
import wherefrom.parts.Part;
import wherefrom.text.Words;

/** The record's main table: each part from where it came out to where it went. */
final class RecordParts {
  private static final EntryFold<RecordParts> READS =
      EntryFold.<RecordParts>none()
          .at(PartOut.class, (parts, it, at) -> parts.out.put(it.item(), at.time()))
          .at(PartFitted.class, (parts, it, at) -> parts.in.put(it.item(), at.time()))
          .on(DecisionMade.class, RecordParts::decided)
          .on(SetDecided.class, RecordParts::decided);

  private final EngineJob job;
  private final Days days;
  private final Map<Integer, Instant> out = new HashMap<>();
  private final Map<Integer, Instant> in = new HashMap<>();
  private final Map<Integer, String> reasons = new HashMap<>();

  RecordParts(OpenJob open) {
    this.job = open.state();
    this.days = open.days();
    job.standing().forEach(logged -> READS.take(this, logged));
  }

  private void decided(DecisionEntry made) {
    made.items().forEach(item -> reasons.put(item, made.reason()));
  }

  RecordSection section() {
    List<RecordSection.Row> rows = new ArrayList<>();
    for (PartRecord part : job.parts()) {
      rows.add(row(part));
    }
    return new RecordSection(
        RecordTable.PARTS,
        List.of("part", "came out of", "out", "found", "decided", "went into", "in"),
        rows,
        "No part is tracked.");
  }

  private RecordSection.Row row(PartRecord record) {
    Part part = record.part();
    int item = part.item();
    String found = found(record);
    String nothing = part.fresh() ? "new" : RecordSection.NOT_CHECKED;
    Optional<wherefrom.parts.Place> fitted = job.findFittedAt(item);
    return new RecordSection.Row(
        List.of(
            Words.number(item) + " " + part.kind().word(),
            part.fresh() ? "bought new" : part.home().words(),
            date(out, item),
            found.isEmpty() ? nothing : found,
            decided(record),
            fitted.map(wherefrom.parts.Place::words).orElse(record.where().words()),
            fitted.isPresent() ? date(in, item) : ""),
        found.isEmpty() && !part.fresh());
  }

  /** Empty where nothing was looked at and nothing measured. */
  private String found(PartRecord record) {
    List<String> words = new ArrayList<>();
    record
        .looks()
        .forEach(
            (key, look) -> {
              if (look != Look.NOT_LOOKED) {
                words.add(Checks.find(key).map(c -> c.title()).orElse(key) + " " + look.word());
              }
            });
    for (MeasuredResult result : job.measures().listResults(Subject.ofPart(record.part().item()))) {
      words.add(
          result.plan().title()
              + ": "
              + result.values().stream()
                  .map(
                      value ->
                          value.words().equals(result.plan().title())
                              ? value.text()
                              : value.words() + " " + value.text())
                  .collect(Collectors.joining(", ")));
    }
    return String.join("; ", words);
  }

  private String decided(PartRecord record) {
    String reason = reasons.getOrDefault(record.part().item(), "");
    return record
        .decision()
        .map(Decision::word)
        .map(word -> reason.isEmpty() ? word : word + ": " + reason)
        .orElse("");
  }

  private String date(Map<Integer, Instant> times, int item) {
    Instant time = times.get(item);
    return time == null ? "" : days.day(time);
  }
}
