package wherefrom.workings.catalogue.compression;

import static wherefrom.workings.catalogue.compression.CombustionSpace.BORE;
import static wherefrom.workings.catalogue.compression.CombustionSpace.CHAMBER;
import static wherefrom.workings.catalogue.compression.CombustionSpace.DECK;
import static wherefrom.workings.catalogue.compression.CombustionSpace.GASKET_THICKNESS;

import java.util.List;
import java.util.Optional;
import wherefrom.quantity.Unit;
import wherefrom.workings.Evaluation;
import wherefrom.workings.MissingInputs;
import wherefrom.workings.Source;
import wherefrom.workings.Terms;
import wherefrom.workings.Values;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.basis.Gap;
import wherefrom.workings.catalogue.basis.Geometry;
import wherefrom.workings.maths.DualNumber;

/** How much to take off the block's deck for a wanted ratio, with the chamber as it is. */
public final class DeckCut implements Working {
  private static final WorkingCard CARD =
      new WorkingCard(
          "deck-cut",
          "Deck cut for a wanted ratio",
          CombustionSpace.inputs(ChamberForRatio.TARGET, CHAMBER),
          "new deck = (swept volume / (ratio − 1) − chamber − gasket hole − piston volume"
              + " − crevice) / (π·bore²/4),"
              + " cut = deck − new deck",
          Source.workedOut("the definition of the compression ratio"),
          List.of(
              "A negative cut means that the ratio is above the wanted one already.",
              "A deck cut also leaves the timing cover standing above the deck, and on a V moves the intake faces."));

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
    DualNumber above = space.withoutChamber().minus(space.deck()).plus(terms.get(CHAMBER));
    DualNumber needed = space.clearanceFor(terms.get(ChamberForRatio.TARGET)).minus(above);
    DualNumber newDeck = needed.dividedBy(Geometry.disc(terms.get(BORE)));
    DualNumber quench = newDeck.plus(terms.get(GASKET_THICKNESS));
    Unit unit = terms.lengthUnit();
    Values values =
        Values.of("cut", "cut of the deck", unit, terms.get(DECK).minus(newDeck))
            .and("deck", "deck afterwards", unit, newDeck)
            .and(Gap.PISTON_TO_HEAD.key(), "piston to head", unit, quench);
    boolean nothing = terms.get(DECK).isLessThan(newDeck);
    return CombustionSpace.withNotes(terms, quench, values)
        .noteIf(nothing, CombustionSpace::ratioAbove);
  }
}
