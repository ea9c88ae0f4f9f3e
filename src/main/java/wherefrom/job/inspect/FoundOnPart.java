package wherefrom.job.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OilClearances;
import wherefrom.job.OpenJob;
import wherefrom.job.PairClearances;
import wherefrom.job.PartRecord;
import wherefrom.job.Remark;
import wherefrom.rules.Ban;
import wherefrom.text.Words;

/**
 * What there is to say of a part in one sentence. That nobody looked is never said as if nothing
 * was found, and a reading that is undecided is a finding.
 *
 * @param standing which of the cases it is
 * @param words the sentence, for every screen
 */
public record FoundOnPart(Standing standing, String words) {

  /** What is known of a part. */
  public enum Standing {
    /** A look or a reading failed. */
    FAILED,
    /** A look is suspect, or a reading undecided. */
    DOUBTFUL,
    /** A rule forbids it. */
    FORBIDDEN,
    /** Nothing speaks against it, and what becomes of it is decided. */
    DECIDED,
    /** New, and nothing speaks against it. */
    NEW,
    /** Nobody looked at it, and nothing was measured. */
    NOT_LOOKED,
    /** What was looked at or measured is good; tests are open. */
    PARTLY,
    /** Every test is a pass, and no reading says otherwise. */
    NOTHING
  }

  /** Whether something speaks against it, or somebody has decided: that is said before all else. */
  public boolean speaksFirst() {
    return standing.compareTo(Standing.DECIDED) <= 0;
  }

  private record Finding(Look look, String words) {}

  /** Of a part that the job has. */
  public static FoundOnPart of(OpenJob job, int item) {
    PartRecord record = job.state().getPart(item);
    List<CheckCard> cards = new Inspecting(job).cards(Subject.ofPart(item));
    List<Finding> findings = findings(job.state(), record, cards);
    Optional<Finding> worst =
        findings.stream()
            .filter(found -> found.look().compareTo(Look.PASS) > 0)
            .reduce((one, other) -> one.look().compareTo(other.look()) >= 0 ? one : other);
    if (worst.isPresent()) {
      boolean failed = worst.get().look() == Look.FAIL;
      return new FoundOnPart(failed ? Standing.FAILED : Standing.DOUBTFUL, worst.get().words());
    }
    Optional<Ban> ban = job.state().findBan(item);
    if (ban.isPresent()) {
      return new FoundOnPart(Standing.FORBIDDEN, Words.withoutStop(ban.get().reason()) + ".");
    }
    return record
        .decision()
        .map(made -> new FoundOnPart(Standing.DECIDED, "Decided: " + made.word()))
        .orElseGet(() -> good(record, cards, !findings.isEmpty()));
  }

  /** Nothing speaks against it: how much of it was looked at. */
  private static FoundOnPart good(PartRecord record, List<CheckCard> cards, boolean anything) {
    long open = cards.stream().filter(card -> card.look() == Look.NOT_LOOKED).count();
    if (open == 0) {
      return new FoundOnPart(Standing.NOTHING, "Nothing was found against it.");
    }
    if (record.part().fresh()) {
      return new FoundOnPart(Standing.NEW, "It is new.");
    }
    return anything
        ? new FoundOnPart(Standing.PARTLY, "Good so far: " + Words.count(open, "test") + " open.")
        : new FoundOnPart(Standing.NOT_LOOKED, "Not looked at yet.");
  }

  /** Each look that was taken, each reading and clearance; what has no limit is not looked at. */
  private static List<Finding> findings(EngineJob job, PartRecord record, List<CheckCard> cards) {
    List<Finding> all = new ArrayList<>();
    for (CheckCard card : cards) {
      if (card.look() != Look.NOT_LOOKED) {
        String note = note(record, card);
        all.add(new Finding(card.look(), card.check().answered(card.look()) + note));
      }
    }
    Subject subject = Subject.ofPart(record.part().item());
    for (MeasuredResult result : job.measures().listResults(subject)) {
      all.add(measured(result.plan().title(), result.worst()));
    }
    new OilClearances(job)
        .findFor(record.part())
        .filter(found -> found.sequence() > 0)
        .ifPresent(found -> all.add(measured("Oil clearance", found.look())));
    new PairClearances(job)
        .find(subject).stream()
            .filter(found -> found.sequence() > 0)
            .map(found -> measured(found.pair().title() + " clearance", found.look()))
            .forEach(all::add);
    return all;
  }

  /** What was written with the look; of one in taking apart the last note on the part. */
  private static String note(PartRecord record, CheckCard card) {
    String own =
        record.remarks().stream()
            .filter(remark -> remark.photo().isEmpty())
            .map(Remark::text)
            .reduce("", (before, after) -> after);
    String note = card.note().equals(Inspecting.AS_IT_CAME_OUT) ? own : card.note();
    return note.isEmpty() ? "" : ". Note: " + note;
  }

  private static Finding measured(String title, Look look) {
    String ruling =
        switch (look) {
          case NOT_LOOKED -> "measured";
          case PASS -> "accept";
          case SUSPECT -> "undecided";
          case FAIL -> "reject";
        };
    return new Finding(look, title + ": " + ruling);
  }
}
