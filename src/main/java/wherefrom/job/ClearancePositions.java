package wherefrom.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.ShellHalf;
import wherefrom.inspection.measure.JournalEnd;
import wherefrom.inspection.measure.Sample;
import wherefrom.quantity.Measured;
import wherefrom.workings.Inputs;
import wherefrom.workings.WorkingAnswer;
import wherefrom.workings.catalogue.bearing.OilClearance;
import wherefrom.workings.catalogue.bearing.OilClearanceByOneWall;

/**
 * The oil clearance at every position of one journal: each reading of the journal comes under the
 * crown as it turns, so it stands against the housing square to the parting line and the shells'
 * walls at the same end.
 */
final class ClearancePositions {
  private final ClearancePieces pieces;

  ClearancePositions(ClearancePieces pieces) {
    this.pieces = pieces;
  }

  /** One answer a position; none while a piece is not measured. */
  List<WorkingAnswer> list() {
    List<WorkingAnswer> answers = new ArrayList<>();
    pieces
        .journal()
        .ifPresent(
            sizes -> {
              for (Sample sample : sizes.samples()) {
                at(JournalEnd.of(sample.station()), sample.measured(sizes.tool()))
                    .ifPresent(answers::add);
              }
            });
    return answers;
  }

  private Optional<WorkingAnswer> at(JournalEnd end, Measured size) {
    Optional<Measured> housing = pieces.crown();
    Optional<Measured> upper = wall(ShellHalf.UPPER, end);
    Optional<Measured> lower = wall(ShellHalf.LOWER, end);
    Optional<Measured> one = upper.or(() -> lower);
    if (housing.isEmpty() || one.isEmpty()) {
      return Optional.empty();
    }
    Inputs inputs = Inputs.empty().with("housing", housing.get()).with("journal", size);
    if (upper.isPresent() && lower.isPresent()) {
      inputs = inputs.with("upper-wall", upper.get()).with("lower-wall", lower.get());
      return Optional.of(new OilClearance().compute(inputs));
    }
    return Optional.of(new OilClearanceByOneWall().compute(inputs.with("wall", one.get())));
  }

  private Optional<Measured> wall(ShellHalf half, JournalEnd end) {
    return pieces.wall(half).flatMap(result -> ClearancePieces.at(result, end.wall()));
  }
}
