package wherefrom.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.ShellHalf;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Judgement;
import wherefrom.inspection.measure.Limit;
import wherefrom.parts.Place;
import wherefrom.quantity.Measured;
import wherefrom.workings.Inputs;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingAnswer;
import wherefrom.workings.catalogue.OilClearance;
import wherefrom.workings.catalogue.OilClearanceByOneWall;

/** Brings the readings of one bearing together: housing less both walls less journal. */
final class ClearanceReadings {
  private static final String FOUR = "housing less both walls less journal";
  private static final String THREE =
      "housing less twice the one wall measured less journal: both shells taken to be alike";

  private final EngineJob job;
  private final Subject.AFeature journal;
  private final boolean main;
  private final List<String> missing = new ArrayList<>();
  private long sequence;
  private Inputs inputs = Inputs.empty();

  ClearanceReadings(EngineJob job, Subject.AFeature journal) {
    this.job = job;
    this.journal = journal;
    main = journal.feature() == Feature.MAIN_JOURNAL;
  }

  BearingClearance workOut() {
    Feature around = main ? Feature.MAIN_HOUSING : Feature.ROD_HOUSING;
    Subject housing = new Subject.AFeature(around, journal.where());
    // The crown lies square to the parting line, and so does the clearance.
    take("housing", around.word(), read(housing, around.key(), "vertical"));
    take("journal", "journal", whole(journal, journal.feature().key()));
    Optional<Measured> upper = wall(ShellHalf.UPPER);
    Optional<Measured> lower = wall(ShellHalf.LOWER);
    boolean both = upper.isPresent() && lower.isPresent();
    if (both) {
      take("upper-wall", "", upper);
      take("lower-wall", "", lower);
    } else {
      take("wall", "a shell's wall", upper.or(() -> lower));
    }
    if (!missing.isEmpty()) {
      return answer(Optional.empty(), "");
    }
    Working working = both ? new OilClearance() : new OilClearanceByOneWall();
    WorkingAnswer worked = working.compute(inputs);
    return worked instanceof Result result
        ? answer(Optional.of(result.getValue("clearance")), both ? FOUR : THREE)
        : answer(Optional.empty(), said(worked));
  }

  private static String said(WorkingAnswer worked) {
    return worked instanceof Nonsense nonsense
        ? nonsense.sentence()
        : "These readings give no clearance: measure again.";
  }

  private BearingClearance answer(Optional<ResultValue> clearance, String said) {
    String plan = journal.feature().key();
    Optional<Limit> limit = job.measures().findLimit(plan, "clearance");
    Optional<Judgement> judgement =
        clearance.flatMap(value -> limit.map(bounds -> bounds.judge(value)));
    long since = Math.max(sequence, job.measures().limitedAt(plan));
    String words = (main ? "main " : "rod ") + journal.where().substring(1);
    return new BearingClearance(
        journal, words, sequence == 0 ? 0 : since, missing, clearance, judgement, said);
  }

  private void take(String key, String words, Optional<Measured> reading) {
    if (reading.isEmpty()) {
      missing.add(words);
    } else {
      inputs = inputs.with(key, reading.get());
    }
  }

  private Optional<Measured> wall(ShellHalf half) {
    String key = main ? "main-shell@M" : "rod-shell@R";
    String place = key + journal.where().substring(1) + (half == ShellHalf.UPPER ? "U" : "L");
    return Place.find(place)
        .flatMap(job::findOwner)
        .flatMap(
            shell ->
                whole(Subject.ofPart(shell.item()), main ? "main-shell-wall" : "rod-shell-wall"));
  }

  /** The reading at one station. */
  private Optional<Measured> read(Subject subject, String plan, String station) {
    return job.measures()
        .findResult(subject, plan)
        .flatMap(
            result ->
                result.samples().stream()
                    .filter(sample -> sample.station().key().equals(station))
                    .findFirst()
                    .map(sample -> seen(result, sample.measured(result.tool()))));
  }

  /** The mean of all stations; of one tool it is no better than a single reading. */
  private Optional<Measured> whole(Subject subject, String plan) {
    return job.measures()
        .findResult(subject, plan)
        .filter(MeasuredResult::isWhole)
        .map(result -> seen(result, result.mean()));
  }

  private Measured seen(MeasuredResult result, Measured reading) {
    sequence = Math.max(sequence, result.sequence());
    return reading;
  }
}
