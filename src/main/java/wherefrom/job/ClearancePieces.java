package wherefrom.job;

import java.util.Optional;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.quantity.Measured;

/** The readings of the pieces of one bearing. */
final class ClearancePieces {
  private final EngineJob job;
  private final Subject.AFeature journal;
  private final boolean main;

  ClearancePieces(EngineJob job, Subject.AFeature journal) {
    this.job = job;
    this.journal = journal;
    main = journal.feature() == Feature.MAIN_JOURNAL;
  }

  Feature around() {
    return main ? Feature.MAIN_HOUSING : Feature.ROD_HOUSING;
  }

  String words() {
    return (main ? "main " : "rod ") + journal.number();
  }

  /** Every reading of the journal as it is now; empty while one is missing. */
  Optional<MeasuredResult> journal() {
    return whole(journal, journal.feature().key())
        .filter(result -> !new SurfaceSizes(job).isOfBefore(result));
  }

  /** As far as it is read: only the reading square to the parting line counts. */
  Optional<MeasuredResult> housing() {
    Subject housing = new Subject.AFeature(around(), journal.where());
    return job.measures().findResult(housing, around().key());
  }

  /** The crown lies square to the parting line, and so does the clearance. */
  Optional<Measured> crown() {
    return housing().flatMap(result -> at(result, "vertical"));
  }

  /** The shell that is fitted counts before the one that came out. */
  Optional<MeasuredResult> wall(ShellHalf half) {
    Place place =
        main
            ? new Place(PartKind.MAIN_SHELL, new MainSpot(journal.number(), half))
            : new Place(PartKind.ROD_SHELL, new RodSpot(journal.number(), half));
    return job.findFitted(place)
        .or(() -> job.findOwner(place))
        .flatMap(
            shell ->
                whole(Subject.ofPart(shell.item()), main ? "main-shell-wall" : "rod-shell-wall"));
  }

  private Optional<MeasuredResult> whole(Subject subject, String plan) {
    return job.measures().findResult(subject, plan).filter(MeasuredResult::isWhole);
  }

  /** The reading at one station. */
  static Optional<Measured> at(MeasuredResult result, String station) {
    return result.samples().stream()
        .filter(sample -> sample.station().key().equals(station))
        .findFirst()
        .map(sample -> sample.measured(result.tool()));
  }
}
