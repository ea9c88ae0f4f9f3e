package wherefrom.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.ShellHalf;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Sample;
import wherefrom.parts.Place;
import wherefrom.quantity.Measured;
import wherefrom.workings.Inputs;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.OilClearance;
import wherefrom.workings.catalogue.OilClearanceByOneWall;

/**
 * The oil clearance at every position of one journal: each reading of the journal comes under the
 * crown as it turns, so it stands against the housing square to the parting line and the shells'
 * walls at the same end.
 */
final class ClearancePositions {
  private final EngineJob job;
  private final Subject.AFeature journal;
  private final boolean main;

  ClearancePositions(EngineJob job, Subject.AFeature journal) {
    this.job = job;
    this.journal = journal;
    main = journal.feature() == Feature.MAIN_JOURNAL;
  }

  /** Empty while a piece is not measured, or where the readings give none. */
  Optional<ClearanceRange> find() {
    Optional<MeasuredResult> sizes = whole(journal, journal.feature().key());
    List<ResultValue> clearances = new ArrayList<>();
    for (Sample sample : sizes.map(MeasuredResult::samples).orElse(List.of())) {
      at(sample, sample.measured(sizes.orElseThrow().tool())).ifPresent(clearances::add);
    }
    Comparator<ResultValue> size = Comparator.comparing(each -> each.amount().inBase());
    return clearances.stream()
        .min(size)
        .map(least -> new ClearanceRange(least, clearances.stream().max(size).orElseThrow()));
  }

  private Optional<ResultValue> at(Sample position, Measured size) {
    String end = position.station().key().startsWith("front") ? "front" : "rear";
    Optional<Measured> housing =
        whole(housing(), housing().feature().key()).flatMap(result -> at(result, "vertical"));
    Optional<Measured> upper = wall(ShellHalf.UPPER, end);
    Optional<Measured> lower = wall(ShellHalf.LOWER, end);
    Optional<Measured> one = upper.or(() -> lower);
    if (housing.isEmpty() || one.isEmpty()) {
      return Optional.empty();
    }
    Inputs inputs = Inputs.empty().with("housing", housing.get()).with("journal", size);
    if (upper.isPresent() && lower.isPresent()) {
      inputs = inputs.with("upper-wall", upper.get()).with("lower-wall", lower.get());
      return worked(new OilClearance().compute(inputs));
    }
    return worked(new OilClearanceByOneWall().compute(inputs.with("wall", one.get())));
  }

  private static Optional<ResultValue> worked(wherefrom.workings.WorkingAnswer answer) {
    return answer instanceof Result result ? result.findValue("clearance") : Optional.empty();
  }

  private Subject.AFeature housing() {
    return new Subject.AFeature(main ? Feature.MAIN_HOUSING : Feature.ROD_HOUSING, journal.where());
  }

  /** The shell that is fitted counts before the one that came out. */
  private Optional<Measured> wall(ShellHalf half, String end) {
    String place =
        (main ? "main-shell@M" : "rod-shell@R")
            + journal.where().substring(1)
            + (half == ShellHalf.UPPER ? "U" : "L");
    return Place.find(place)
        .flatMap(spot -> job.findFitted(spot).or(() -> job.findOwner(spot)))
        .flatMap(
            shell ->
                whole(Subject.ofPart(shell.item()), main ? "main-shell-wall" : "rod-shell-wall"))
        .flatMap(result -> at(result, end));
  }

  private Optional<MeasuredResult> whole(Subject subject, String plan) {
    return job.measures().findResult(subject, plan).filter(MeasuredResult::isWhole);
  }

  private static Optional<Measured> at(MeasuredResult result, String station) {
    return result.samples().stream()
        .filter(sample -> sample.station().key().equals(station))
        .findFirst()
        .map(sample -> sample.measured(result.tool()));
  }
}
