package wherefrom.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.ShellHalf;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Judgement;
import wherefrom.inspection.measure.Limit;
import wherefrom.quantity.Measured;
import wherefrom.workings.Inputs;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingAnswer;
import wherefrom.workings.catalogue.bearing.OilClearance;
import wherefrom.workings.catalogue.bearing.OilClearanceByOneWall;

/** Brings the readings of one bearing together: housing less both walls less journal. */
final class ClearanceReadings {
  private static final String FOUR = "housing minus both walls minus journal";
  private static final String THREE =
      "housing minus twice the one wall minus journal: both shells taken as alike";

  private final EngineJob job;
  private final Subject.AFeature journal;
  private final ClearancePieces pieces;
  private final List<String> missing = new ArrayList<>();
  private long sequence;
  private Inputs inputs = Inputs.empty();

  ClearanceReadings(EngineJob job, Subject.AFeature journal) {
    this.job = job;
    this.journal = journal;
    pieces = new ClearancePieces(job, journal);
  }

  BearingClearance workOut() {
    take("housing", pieces.around().word(), crown());
    take("journal", "journal", mean(pieces.journal()));
    Optional<Measured> upper = mean(pieces.wall(ShellHalf.UPPER));
    Optional<Measured> lower = mean(pieces.wall(ShellHalf.LOWER));
    boolean both = upper.isPresent() && lower.isPresent();
    if (both) {
      take("upper-wall", "", upper);
      take("lower-wall", "", lower);
    } else {
      take("wall", "a shell's wall", upper.or(() -> lower));
    }
    if (!missing.isEmpty()) {
      return none("");
    }
    Working working = both ? new OilClearance() : new OilClearanceByOneWall();
    return answer(working.compute(inputs), both ? FOUR : THREE);
  }

  /** A journal that does not go in at one position does not go in. */
  private BearingClearance answer(WorkingAnswer mean, String how) {
    List<WorkingAnswer> answers = new ArrayList<>(new ClearancePositions(pieces).list());
    Optional<ClearanceRange> range = ClearanceRange.of(answers);
    answers.add(mean);
    if (range.isPresent() && mean instanceof Result result) {
      return answer(Optional.of(result.getValue("clearance")), range, how);
    }
    return none(
        answers.stream()
            .filter(Nonsense.class::isInstance)
            .map(Nonsense.class::cast)
            .map(Nonsense::sentence)
            .findFirst()
            .orElse("These readings give no clearance: measure again."));
  }

  private BearingClearance none(String said) {
    return answer(Optional.empty(), Optional.empty(), said);
  }

  private BearingClearance answer(
      Optional<ResultValue> clearance, Optional<ClearanceRange> range, String said) {
    String plan = journal.feature().key();
    Optional<Limit> limit = job.measures().findLimit(plan, "clearance");
    Optional<Judgement> judgement = range.flatMap(known -> limit.map(known::judge));
    long since = sequence == 0 ? 0 : Math.max(sequence, job.measures().limitedAt(plan));
    return new BearingClearance(
        journal, pieces.words(), since, missing, clearance, range, judgement, said);
  }

  private void take(String key, String words, Optional<Measured> reading) {
    if (reading.isEmpty()) {
      missing.add(words);
    } else {
      inputs = inputs.with(key, reading.get());
    }
  }

  private Optional<Measured> crown() {
    pieces.housing().ifPresent(this::seen);
    return pieces.crown();
  }

  /** The mean of all stations; of one tool it is no better than a single reading. */
  private Optional<Measured> mean(Optional<MeasuredResult> result) {
    result.ifPresent(this::seen);
    return result.map(MeasuredResult::mean);
  }

  private void seen(MeasuredResult result) {
    sequence = Math.max(sequence, result.sequence());
  }
}
