package wherefrom.inspection.measure;

import java.util.List;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;
import wherefrom.workings.catalogue.basis.Sisters;

/** Crank, shells, housings, bores, pistons, faces. */
final class BottomEndPlans {
  static final List<ReadingPlan> ROWS =
      List.of(
          journal(Feature.ROD_JOURNAL, "rod-journal", "Rod journal"),
          journal(Feature.MAIN_JOURNAL, "main-journal", "Main journal"),
          shell(PartKind.ROD_SHELL, "rod-shell-wall"),
          shell(PartKind.MAIN_SHELL, "main-shell-wall"),
          housing(Feature.ROD_HOUSING, "rod-housing", "Big-end housing"),
          housing(Feature.MAIN_HOUSING, "main-housing", "Main housing"),
          ReadingPlan.of(Feature.BORE, "bore", "Cylinder bore", Derivation.BORE)
              .at("thrust-top", "Square to the crank, just under the ridge")
              .at("thrust-middle", "Square to the crank, middle")
              .at("thrust-bottom", "Square to the crank, bottom of the ring travel")
              .at("axial-top", "Along the crank, just under the ridge")
              .at("axial-middle", "Along the crank, middle")
              .at("axial-bottom", "Along the crank, bottom of the ring travel")
              .between(40, 200)
              .alikeWithin(Sisters.BORE)
              .source(Sources.FAA_32),
          ReadingPlan.of(
                  PartKind.PISTON, "piston-diameter", "Piston at the skirt", Derivation.VALUE)
              .at("skirt", "Skirt, square to the pin, at the height the maker gives")
              .between(40, 200)
              .source(Sources.TM_653),
          ReadingPlan.of(Feature.RINGS, "ring-gap", "Ring gap", Derivation.EACH)
              .at("top", "Top ring")
              .at("second", "Second ring")
              .how("Each ring squared in its own bore with a piston.")
              .between(0.02, 5)
              .source(Sources.RING_TIP),
          ReadingPlan.of(Feature.RINGS, "oil-rail-gap", "Oil rail gap", Derivation.EACH)
              .at("upper-rail", "Upper oil rail")
              .at("lower-rail", "Lower oil rail")
              .how("Each rail squared in its own bore with a piston.")
              .between(0.02, 5)
              .source(Sources.RING_TIP),
          flatness(Feature.HEAD, "head-flatness", "Head flatness, six lines", Sources.TM_549),
          flatness(Feature.DECK, "deck-flatness", "Deck flatness, six lines", Sources.TM_300),
          ReadingPlan.of(Feature.CRANK, "crank-bow", "Crank bow", Derivation.HALF)
              .at("swing", "Dial at the center main, crank in V-blocks, one turn")
              .how("The bow is half of the dial's swing.")
              .between(0, 3)
              .source(Sources.TM_653),
          ReadingPlan.of(Feature.CRANK, "crank-end-play", "Crank end play", Derivation.VALUE)
              .at("play", "Dial on the crank's nose, pried back and forth")
              .between(0, 3));

  private BottomEndPlans() {}

  private static ReadingPlan journal(Feature feature, String key, String title) {
    return ReadingPlan.of(feature, key, title, Derivation.JOURNAL)
        .at("front-vertical", "Front end, one direction")
        .at("front-horizontal", "Front end, turned by 90°")
        .at("rear-vertical", "Rear end, the first direction")
        .at("rear-horizontal", "Rear end, turned by 90°")
        .how("Clear of the fillets and of the oil hole.")
        .between(20, 150)
        .alikeWithin(Sisters.SHAFT)
        .source(Sources.TM_262);
  }

  private static ReadingPlan shell(PartKind kind, String key) {
    return ReadingPlan.of(kind, key, "Shell wall at the crown", Derivation.SPREAD)
        .at("front", "Crown, near the front edge")
        .at("middle", "Crown, middle")
        .at("rear", "Crown, near the rear edge")
        .how("Ball-anvil micrometer, away from the parting line.")
        .between(0.8, 8)
        .alikeWithin(Sisters.SHAFT)
        .source(Sources.TM_604);
  }

  private static ReadingPlan housing(Feature feature, String key, String title) {
    return ReadingPlan.of(feature, key, title, Derivation.SPREAD)
        .at("vertical", "Square to the parting line")
        .at("left", "45° to the left")
        .at("right", "45° to the right")
        .how("Shells out, cap torqued.")
        .between(20, 170)
        .alikeWithin(Sisters.BORE);
  }

  private static ReadingPlan flatness(Feature feature, String key, String title, String source) {
    return ReadingPlan.of(feature, key, title, Derivation.LARGEST)
        .at("front-long", "Along, near side")
        .at("middle-long", "Along, middle")
        .at("rear-long", "Along, far side")
        .at("diagonal-one", "Corner to corner")
        .at("diagonal-two", "The other corners")
        .at("across", "Across, worst place")
        .how("Straightedge; the thickest feeler that goes under.")
        .between(0, 3)
        .source(source);
  }
}
