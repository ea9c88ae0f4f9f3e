package wherefrom.workings.catalogue.compression;

import static wherefrom.workings.catalogue.compression.CombustionSpace.BORE;
import static wherefrom.workings.catalogue.compression.CombustionSpace.CHAMBER;
import static wherefrom.workings.catalogue.compression.CombustionSpace.DECK;
import static wherefrom.workings.catalogue.compression.CombustionSpace.GASKET_THICKNESS;
import static wherefrom.workings.catalogue.compression.HeadCut.OPENING;

import java.util.List;
import java.util.Optional;
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
import wherefrom.workings.catalogue.basis.Gap;
import wherefrom.workings.catalogue.basis.Geometry;
import wherefrom.workings.maths.DualNumber;

/** The ratio after milling head and deck. */
public final class RatioAfterCut implements Working {
  public static final AmountInput HEAD_CUT =
      AmountInput.length("head-cut", "What is milled off the head; 0 for none.")
          .in(Range.between("0", "25"));
  public static final AmountInput DECK_CUT =
      AmountInput.length("deck-cut", "What is milled off the block's deck; 0 for none.")
          .in(Range.between("0", "25"));

  private static final WorkingCard CARD =
      new WorkingCard(
          "ratio-after-cut",
          "Compression ratio after a cut",
          CombustionSpace.inputs(CHAMBER, HEAD_CUT, OPENING, DECK_CUT),
          "ratio as in compression-ratio, with chamber = chamber − head cut·opening"
              + " and deck = deck − deck cut",
          Source.workedOut("compression-ratio and head-cut"),
          List.of("The opening is taken as constant over the depth of the cut."));

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
    DualNumber chamber = terms.get(CHAMBER).minus(terms.get(HEAD_CUT).times(terms.get(OPENING)));
    if (!DualNumber.of(0).isLessThan(chamber)) {
      return new Nonsense(
          HEAD_CUT.key(), "A head cut of " + terms.text(HEAD_CUT) + " leaves no chamber at all.");
    }
    DualNumber deckSlice = Geometry.cylinder(terms.get(BORE), terms.get(DECK_CUT));
    DualNumber clearance = chamber.plus(space.withoutChamber()).minus(deckSlice);
    if (!DualNumber.of(0).isLessThan(clearance)) {
      return CompressionRatio.noRoom(terms);
    }
    DualNumber deck = terms.get(DECK).minus(terms.get(DECK_CUT));
    DualNumber gap = deck.plus(terms.get(GASKET_THICKNESS));
    Unit cc = Unit.CUBIC_CENTIMETRE;
    Values values =
        Values.of("ratio", "compression ratio", Unit.ONE, space.ratio(clearance))
            .and("chamber", "chamber afterwards", cc, chamber)
            .and("clearance", "clearance volume", cc, clearance)
            .and("deck", "deck afterwards", terms.lengthUnit(), deck)
            .and(Gap.PISTON_TO_HEAD.key(), "piston to head", terms.lengthUnit(), gap);
    return CombustionSpace.withRatioNotes(terms, gap, space.ratio(clearance), values);
  }
}
