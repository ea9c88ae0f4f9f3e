package wherefrom.workings.catalogue.compression;

import static wherefrom.workings.catalogue.compression.CombustionSpace.CHAMBER;

import java.util.List;
import java.util.Optional;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Evaluation;
import wherefrom.workings.MissingInputs;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Range;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.maths.DualNumber;

/** The chamber volume that gives a wanted ratio. */
public final class ChamberForRatio implements Working {
  public static final AmountInput TARGET =
      AmountInput.of("target", Dimension.NUMBER, "The compression ratio wanted, such as 9.5.")
          .in(Range.above("1", "100"));
  private static final AmountInput NOW = CHAMBER.optional();

  private static final WorkingCard CARD =
      new WorkingCard(
          "chamber-for-ratio",
          "Chamber for a wanted ratio",
          CombustionSpace.inputs(TARGET, NOW),
          "chamber = swept volume / (ratio − 1) − gasket hole − deck space − piston volume − crevice",
          Source.workedOut("the definition of the compression ratio"),
          List.of("With the chamber as it is now, the volume to remove is given as well."));

  @Override
  public WorkingCard card() {
    return CARD;
  }

  @Override
  public Evaluation evaluate(Terms terms) {
    Optional<MissingInputs> missing = CombustionSpace.findMissing(terms);
    if (missing.isPresent()) {
      return missing.get();
    }
    CombustionSpace space = CombustionSpace.of(terms);
    DualNumber chamber = space.clearanceFor(terms.get(TARGET)).minus(space.withoutChamber());
    if (!DualNumber.of(0).isLessThan(chamber)) {
      return new Nonsense(
          TARGET.key(),
          "A ratio of "
              + terms.text(TARGET)
              + " cannot be reached. Gasket, deck and piston alone leave too much room.");
    }
    Values values =
        Values.of("chamber", "chamber needed", Unit.CUBIC_CENTIMETRE, chamber)
            .and(
                "clearance",
                "clearance volume needed",
                Unit.CUBIC_CENTIMETRE,
                space.clearanceFor(terms.get(TARGET)));
    Values all =
        terms
            .find(NOW)
            .map(
                now -> values.and("remove", "to remove", Unit.CUBIC_CENTIMETRE, now.minus(chamber)))
            .orElse(values);
    boolean mustGrow = terms.find(NOW).filter(now -> now.isLessThan(chamber)).isPresent();
    return CombustionSpace.withNotes(terms, CombustionSpace.pistonToHead(terms), all)
        .noteIf(mustGrow, CombustionSpace::ratioAbove);
  }
}
