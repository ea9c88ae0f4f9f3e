package wherefrom.workings.plan;

import static wherefrom.workings.catalogue.CombustionSpace.BORE;
import static wherefrom.workings.catalogue.CombustionSpace.CHAMBER;
import static wherefrom.workings.catalogue.CombustionSpace.DECK;
import static wherefrom.workings.catalogue.CombustionSpace.GASKET_BORE;
import static wherefrom.workings.catalogue.CombustionSpace.GASKET_THICKNESS;
import static wherefrom.workings.catalogue.CombustionSpace.PISTON_VOLUME;
import static wherefrom.workings.catalogue.CombustionSpace.STROKE;
import static wherefrom.workings.catalogue.RatioAfterCut.DECK_CUT;
import static wherefrom.workings.catalogue.RatioAfterCut.HEAD_CUT;

import java.util.Optional;
import wherefrom.quantity.Unit;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Note;
import wherefrom.workings.Source;
import wherefrom.workings.catalogue.ChamberForRatio;
import wherefrom.workings.catalogue.CombustionSpace;
import wherefrom.workings.catalogue.Geometry;
import wherefrom.workings.catalogue.HeadCut;
import wherefrom.workings.catalogue.PistonToHead;
import wherefrom.workings.maths.Dual;

/** From the wanted ratio, or the cuts themselves, to the ratio and the lowering of the head. */
final class RatioStep {
  private RatioStep() {}

  /** Nonsense where the figures leave no room above the piston. */
  static Optional<Nonsense> work(PlanDraft draft) {
    boolean known =
        draft.hasAll(
            "compression ratio",
            BORE,
            STROKE,
            CHAMBER,
            GASKET_BORE,
            GASKET_THICKNESS,
            DECK,
            PISTON_VOLUME);
    Optional<Nonsense> trouble = known ? ratio(draft) : Optional.empty();
    if (trouble.isEmpty()) {
      lowering(draft);
    }
    return trouble;
  }

  private static Optional<Nonsense> ratio(PlanDraft draft) {
    if (CombustionSpace.findMissing(draft.terms()).isPresent()) {
      return Optional.of(
          new Nonsense(
              CombustionSpace.CREVICE_HEIGHT.key(),
              "The crevice needs its height and its gap, or neither."));
    }
    CombustionSpace space = CombustionSpace.of(draft.terms());
    Dual deckCut = draft.orZero(DECK_CUT);
    Dual slice = Geometry.cylinder(draft.get(BORE), deckCut);
    Dual rest = space.withoutChamber().minus(slice);
    Dual cut = headCut(draft, space, rest);
    Dual opening = draft.orZero(HeadCut.OPENING);
    Dual chamber = draft.get(CHAMBER).minus(cut.times(opening));
    Dual clearance = chamber.plus(rest);
    if (!isPositive(chamber) || !isPositive(clearance)) {
      return Optional.of(noRoom(draft));
    }
    Dual deck = draft.get(DECK).minus(deckCut);
    draft.add("swept", "swept volume", Unit.CUBIC_CENTIMETRE, space.swept());
    draft.add("chamber", "chamber", Unit.CUBIC_CENTIMETRE, chamber);
    draft.add("ratio", "compression ratio", Unit.ONE, space.ratio(clearance));
    draft.length("head-cut", "cut off the head", cut);
    draft.length("deck", "deck", deck);
    draft.length(PistonToHead.KEY, "piston to head", deck.plus(draft.get(GASKET_THICKNESS)));
    return Optional.empty();
  }

  private static boolean isPositive(Dual dual) {
    return Dual.of(0).isLessThan(dual);
  }

  private static Nonsense noRoom(PlanDraft draft) {
    String field = draft.terms().has(HEAD_CUT) ? HEAD_CUT.key() : PISTON_VOLUME.key();
    return new Nonsense(
        field, "These figures leave no room above the piston: check cuts, deck and dome.");
  }

  /** As entered; else what the wanted ratio asks for; else none. */
  private static Dual headCut(PlanDraft draft, CombustionSpace space, Dual rest) {
    if (draft.terms().has(HEAD_CUT)) {
      boolean opened =
          isZero(draft.get(HEAD_CUT)) || draft.hasAll("ratio after the head cut", HeadCut.OPENING);
      return opened ? draft.get(HEAD_CUT) : Dual.of(0);
    }
    if (!draft.terms().has(ChamberForRatio.TARGET)
        || !draft.hasAll("cut for the wanted ratio", HeadCut.OPENING)) {
      return Dual.of(0);
    }
    Dual wanted = space.clearanceFor(draft.get(ChamberForRatio.TARGET)).minus(rest);
    Dual cut = draft.get(CHAMBER).minus(wanted).dividedBy(draft.get(HeadCut.OPENING));
    if (cut.isLessThan(Dual.of(0))) {
      draft.note(
          Note.conclusion(
              "ratio-above-target",
              "The ratio is above the wanted one without any cut of the head.",
              Source.workedOut("the inputs given")));
      return Dual.of(0);
    }
    return cut;
  }

  private static boolean isZero(Dual dual) {
    return dual.toDouble() == 0;
  }

  private static void lowering(PlanDraft draft) {
    Dual cut = draft.find("head-cut").orElseGet(() -> draft.orZero(HEAD_CUT));
    Dual gasket =
        draft
            .terms()
            .find(PlanInputs.GASKET_BEFORE)
            .flatMap(before -> draft.terms().find(GASKET_THICKNESS).map(before::minus))
            .orElseGet(() -> Dual.of(0));
    draft.length("lowering", "head comes down by", cut.plus(draft.orZero(DECK_CUT)).plus(gasket));
  }
}
