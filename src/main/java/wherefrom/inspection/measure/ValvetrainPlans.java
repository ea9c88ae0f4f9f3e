package wherefrom.inspection.measure;

import java.util.List;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Dimension;
import wherefrom.workings.catalogue.basis.Sisters;

/** Pushrods, lifters, lobes, studs, valves and springs. */
final class ValvetrainPlans {
  static final List<ReadingPlan> ROWS =
      List.of(
          ReadingPlan.of(PartKind.PUSHROD, "pushrod-runout", "Pushrod runout", Derivation.VALUE)
              .at("middle", "Middle of the pushrod: dial or feeler, pushrod turned once")
              .how(
                  "Roll it on a plate: the largest feeler that goes under its middle. Between"
                      + " centers: half of the dial's swing.")
              .between(0, 3)
              .source(Sources.OVERHAUL_MANUAL),
          ReadingPlan.of(PartKind.PUSHROD, "pushrod-length", "Pushrod length", Derivation.VALUE)
              .at("length", "End to end over the balls")
              .how("Caliper, pushrod held straight between the jaws.")
              .between(80, 400),
          ReadingPlan.of(
                  PartKind.LIFTER, "lifter-crown", "Crown of the lifter foot", Derivation.VALUE)
              .at("crown", "Middle of the foot above its edge")
              .how("Dial on the middle, then on the edge: the difference. Flat reads 0.")
              .between(-0.5, 0.5)
              .source(Sources.OVERHAUL_MANUAL),
          ReadingPlan.of(PartKind.LIFTER, "lifter-diameter", "Lifter diameter", Derivation.SPREAD)
              .at("top-a", "Near the top")
              .at("top-b", "Near the top, turned by 90°")
              .at("foot-a", "Near the foot")
              .at("foot-b", "Near the foot, turned by 90°")
              .between(10, 40)
              .alikeWithin(Sisters.SHAFT)
              .source(Sources.TM_653),
          ReadingPlan.of(Feature.LIFTER_BORE, "lifter-bore", "Lifter bore", Derivation.SPREAD)
              .at("top-a", "Top")
              .at("top-b", "Top, turned by 90°")
              .at("bottom-a", "Bottom")
              .at("bottom-b", "Bottom, turned by 90°")
              .between(10, 40)
              .alikeWithin(Sisters.SHAFT),
          ReadingPlan.of(Feature.LOBE, "lobe-lift", "Lobe lift", Derivation.LIFT)
              .at("heel-toe", "Heel to toe")
              .at("across", "Across, square to it")
              .how("Micrometer on the lobe, both at the middle of its width.")
              .between(10, 80)
              .source(Sources.TM_229),
          ReadingPlan.of(Feature.STUD, "stud-height", "Stud height", Derivation.VALUE)
              .at("height", "From the head's face to the top of the stud")
              .how("Height gauge from one machined face for all studs of the head.")
              .between(10, 150),
          ReadingPlan.of(PartKind.VALVE, "stem-diameter", "Valve stem", Derivation.SPREAD)
              .at("top", "Just under the keeper groove")
              .at("middle", "Middle of the worn length")
              .at("bottom", "Bottom of the worn length")
              .between(4, 16)
              .alikeWithin(Sisters.SHAFT)
              .source(Sources.TM_653),
          ReadingPlan.of(PartKind.VALVE, "valve-margin", "Valve margin", Derivation.SPREAD)
              .at("one", "Thickness of the rim")
              .at("two", "The same, turned by 120°")
              .at("three", "The same, turned by 240°")
              .between(0, 5)
              .source(Sources.TM_322),
          ReadingPlan.of(PartKind.SPRING, "spring-free", "Spring free height", Derivation.VALUE)
              .at("height", "Free height")
              .between(20, 90)
              .source(Sources.NAVY_14076),
          ReadingPlan.of(PartKind.SPRING, "spring-square", "Spring out of square", Derivation.VALUE)
              .at("gap", "Largest gap at the top coil, spring turned on the plate")
              .between(0, 6)
              .source(Sources.TM_653),
          ReadingPlan.of(
                  PartKind.SPRING, "spring-load", "Spring load at a height", Derivation.VALUE)
              .at(new Station("load", "Load at the height that the manual names", Dimension.FORCE))
              .how("Scale and stop at that height. Write the height in the note.")
              .between(20, 4000)
              .source(Sources.TM_247_SPRINGS),
          lash("lash-cold", "Lash, cold", "Feeler that just drags, engine cold"),
          lash("lash-hot", "Lash, hot", "Feeler that just drags, engine hot"),
          lash("lash-after", "Lash after the first heat", "Cold again, after the first heat"),
          ReadingPlan.of(
                  Feature.VALVE_TIP,
                  "piston-valve",
                  "Piston to valve, by degrees",
                  Derivation.DEGREES)
              .at("before-15", "15° before top dead center of overlap")
              .at("before-10", "10° before top dead center")
              .at("before-5", "5° before top dead center")
              .at("at-0", "At top dead center of overlap")
              .at("after-5", "5° after top dead center")
              .at("after-10", "10° after top dead center")
              .at("after-15", "15° after top dead center")
              .how(
                  "Checking springs, solid lifters, head torqued on its gasket. Push the valve"
                      + " down to the piston, read the dial.")
              .between(0, 20),
          ReadingPlan.of(Feature.VALVE_TIP, "lifter-preload", "Lifter preload", Derivation.VALUE)
              .at("preload", "From zero lash down: how far the plunger went")
              .how("Lifter on the heel of its lobe. Write turns and thread in the note.")
              .between(0, 6),
          ReadingPlan.of(Feature.CAMSHAFT, "cam-end-play", "Cam end play", Derivation.VALUE)
              .at("play", "Dial on the cam's nose, pushed back and forth")
              .between(0, 2),
          ReadingPlan.of(Feature.TIMING, "chain-deflection", "Chain deflection", Derivation.VALUE)
              .at("total", "Mid-span, from all in to all out")
              .between(0, 60)
              .source(Sources.TM_237));

  private ValvetrainPlans() {}

  /** Cold or hot, as the cam's sheet says; how the heel was found goes into the note. */
  private static ReadingPlan lash(String key, String title, String words) {
    return ReadingPlan.of(Feature.VALVE_TIP, key, title, Derivation.VALUE)
        .at("lash", words)
        .how("Lifter on the heel. The cam's sheet says hot or cold.")
        .between(0, 2);
  }
}
