package wherefrom.job;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.KindsTracked;

/** What is worked out from a job's entries when it is first asked for, until the next entry. */
final class WorkedOut {
  private final EngineJob job;
  private Optional<StandingRules> rules = Optional.empty();
  private Optional<MeasureBook> measures = Optional.empty();
  private Optional<Findings> findings = Optional.empty();
  private Optional<Meanings> meanings = Optional.empty();
  private Optional<LookBook> looks = Optional.empty();
  private final Map<Subject.AFeature, BearingClearance> clearances = new HashMap<>();
  private final Remembered remembered;

  WorkedOut(EngineJob job) {
    this.job = job;
    this.remembered = new Remembered(job);
  }

  /** To be told of every entry, before it is taken in. */
  void forget(JobEntry entry) {
    remembered.forget();
    if (!BesideParts.KINDS.have(entry)) {
      forget();
    }
    if (entry instanceof KindsTracked) {
      // Nothing else changes what changes mean.
      meanings = Optional.empty();
    }
  }

  /** All but what changes mean. */
  void forget() {
    remembered.forget();
    rules = Optional.empty();
    measures = Optional.empty();
    findings = Optional.empty();
    looks = Optional.empty();
    clearances.clear();
  }

  /** What changes mean for an engine does not hang on what was done to it. */
  void keepMeaningsOf(WorkedOut other) {
    meanings = other.meanings.filter(known -> known.isOf(job.layout(), job.places()));
  }

  /** What rooms work out for themselves; to be forgotten once an entry is taken in, too. */
  Remembered remembered() {
    return remembered;
  }

  StandingRules rules() {
    StandingRules now = rules.orElseGet(() -> StandingRules.of(job));
    rules = Optional.of(now);
    return now;
  }

  MeasureBook measures() {
    MeasureBook now = measures.orElseGet(() -> MeasureBook.of(job));
    measures = Optional.of(now);
    return now;
  }

  Findings findings() {
    Findings now = findings.orElseGet(() -> new Findings(job));
    findings = Optional.of(now);
    return now;
  }

  LookBook lookBook() {
    LookBook now = looks.orElseGet(() -> new LookBook(job.standing()));
    looks = Optional.of(now);
    return now;
  }

  /** The oil clearance at a journal. */
  BearingClearance clearance(Subject.AFeature journal) {
    BearingClearance known = clearances.get(journal);
    BearingClearance now = known == null ? new ClearanceReadings(job, journal).workOut() : known;
    clearances.put(journal, now);
    return now;
  }

  Meanings meanings() {
    Meanings now = meanings.orElseGet(() -> new Meanings(job.layout(), job.places()));
    meanings = Optional.of(now);
    return now;
  }
}
