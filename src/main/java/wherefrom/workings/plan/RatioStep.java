package wherefrom.workings.plan;

import static wherefrom.workings.catalogue.compression.CombustionSpace.BORE;
import static wherefrom.workings.catalogue.compression.CombustionSpace.CHAMBER;
import static wherefrom.workings.catalogue.compression.CombustionSpace.DECK;
import static wherefrom.workings.catalogue.compression.CombustionSpace.GASKET_BORE;
import static wherefrom.workings.catalogue.compression.CombustionSpace.GASKET_THICKNESS;
import static wherefrom.workings.catalogue.compression.CombustionSpace.PISTON_VOLUME;
import static wherefrom.workings.catalogue.compression.CombustionSpace.STROKE;
import static wherefrom.workings.catalogue.compression.RatioAfterCut.DECK_CUT;
import static wherefrom.workings.catalogue.compression.RatioAfterCut.HEAD_CUT;

import java.util.Optional;
import wherefrom.quantity.Unit;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Note;
import wherefrom.workings.Source;
import wherefrom.workings.catalogue.basis.Gap;
import wherefrom.workings.catalogue.basis.Geometry;
import wherefrom.workings.catalogue.compression.ChamberForRatio;
import wherefrom.workings.catalogue.compression.CombustionSpace;
import wherefrom.workings.catalogue.compression.HeadCut;
import wherefrom.workings.maths.DualNumber;

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
    DualNumber deckCut = draft.orZero(DECK_CUT);
    DualNumber slice = Geometry.cylinder(draft.get(BORE), deckCut);
    DualNumber rest = space.withoutChamber().minus(slice);
    draft.add("swept", "swept volume", Unit.CUBIC_CENTIMETRE, space.swept());
    Optional<DualNumber> cut = findHeadCut(draft, space, rest);
    Optional<DualNumber> chamber = cut.flatMap(known -> findChamber(draft, asMade(draft, known)));
    if (chamber.isEmpty() || !isZero(cut.get()) || !isZero(deckCut)) {
      uncut(draft, space);
    }
    if (chamber.isPresent()) {
      DualNumber clearance = chamber.get().plus(rest);
      if (!isPositive(chamber.get()) || !isPositive(clearance)) {
        return Optional.of(noRoom(draft));
      }
      draft.add("chamber", "chamber", Unit.CUBIC_CENTIMETRE, chamber.get());
      DualNumber ratio = space.ratio(clearance);
      draft.add("ratio", "compression ratio", Unit.ONE, ratio);
      CombustionSpace.findOddRatio(ratio).ifPresent(draft::note);
    }
    DualNumber deck = draft.get(DECK).minus(deckCut);
    cut.ifPresent(known -> draft.length("head-cut", "cut off the head", known));
    draft.length("deck", "deck", deck);
    draft.gap(Gap.PISTON_TO_HEAD, "piston to head", deck.plus(draft.get(GASKET_THICKNESS)));
    return Optional.empty();
  }

  /** What it is before anything is cut; it needs no opening of the chamber. */
  private static void uncut(PlanDraft draft, CombustionSpace space) {
    DualNumber clearance = draft.get(CHAMBER).plus(space.withoutChamber());
    if (isPositive(clearance)) {
      draft.add("ratio-uncut", "ratio without the cut", Unit.ONE, space.ratio(clearance));
    }
  }

  /** After the cut; empty where nobody knows what a cut takes off it. */
  private static Optional<DualNumber> findChamber(PlanDraft draft, DualNumber cut) {
    if (isZero(cut)) {
      return Optional.of(draft.get(CHAMBER));
    }
    return draft.hasAll("ratio after the head cut", HeadCut.OPENING)
        ? Optional.of(draft.get(CHAMBER).minus(cut.times(draft.get(HeadCut.OPENING))))
        : Optional.empty();
  }

  private static boolean isPositive(DualNumber dual) {
    return DualNumber.of(0).isLessThan(dual);
  }

  private static Nonsense noRoom(PlanDraft draft) {
    String field = draft.terms().has(HEAD_CUT) ? HEAD_CUT.key() : PISTON_VOLUME.key();
    return new Nonsense(
        field, "These figures leave no room above the piston. Check cuts, deck and dome.");
  }

  /** As entered; else what the wanted ratio asks for; else none. Empty where it is not known. */
  private static Optional<DualNumber> findHeadCut(
      PlanDraft draft, CombustionSpace space, DualNumber rest) {
    if (draft.terms().has(HEAD_CUT) || !draft.terms().has(ChamberForRatio.TARGET)) {
      return Optional.of(draft.orZero(HEAD_CUT));
    }
    return draft.hasAll("cut for the wanted ratio", HeadCut.OPENING)
        ? Optional.of(cutForTarget(draft, space, rest))
        : Optional.empty();
  }

  private static DualNumber cutForTarget(PlanDraft draft, CombustionSpace space, DualNumber rest) {
    DualNumber wanted = space.clearanceFor(draft.get(ChamberForRatio.TARGET)).minus(rest);
    DualNumber cut = draft.get(CHAMBER).minus(wanted).dividedBy(draft.get(HeadCut.OPENING));
    if (cut.isLessThan(DualNumber.of(0))) {
      draft.note(
          Note.conclusion(
              "ratio-above-target",
              "The ratio is above the wanted one with no cut of the head.",
              Source.workedOut("the inputs given")));
      return DualNumber.of(0);
    }
    return cut;
  }

  /**
   * A cut that was worked out is made as shown: where it comes from too large a chamber, the ratio
   * after it is off as well, and says so with its band.
   */
  private static DualNumber asMade(PlanDraft draft, DualNumber cut) {
    if (draft.terms().has(HEAD_CUT) || isZero(cut)) {
      return cut;
    }
    draft.note(PlanNotes.RATIO_OF_THE_CUT);
    return DualNumber.of(cut.value());
  }

  private static boolean isZero(DualNumber dual) {
    return dual.toDouble() == 0;
  }

  /** Left out where a ratio is wanted and the cut for it is not known. */
  private static void lowering(PlanDraft draft) {
    Optional<DualNumber> cut = draft.find("head-cut").or(() -> draft.terms().find(HEAD_CUT));
    if (cut.isEmpty() && draft.terms().has(ChamberForRatio.TARGET)) {
      return;
    }
    DualNumber gasket =
        draft
            .terms()
            .find(PlanInputs.GASKET_BEFORE)
            .flatMap(before -> draft.terms().find(GASKET_THICKNESS).map(before::minus))
            .orElseGet(() -> DualNumber.of(0));
    DualNumber known = cut.orElseGet(() -> DualNumber.of(0));
    draft.length("lowering", "head comes down by", known.plus(draft.orZero(DECK_CUT)).plus(gasket));
  }
}
