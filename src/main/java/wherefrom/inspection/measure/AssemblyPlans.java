package wherefrom.inspection.measure;

import java.util.List;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Sources;
import wherefrom.quantity.Dimension;

/** What is read while the engine goes together: side play, thrust, pump, valves, deck, runout. */
final class AssemblyPlans {
  static final List<ReadingPlan> ROWS =
      List.of(
          ReadingPlan.of(
                  Feature.ROD_JOURNAL, "rod-side-clearance", "Rod side clearance", Derivation.VALUE)
              .at("side", "Feeler between rod and crank, or two rods")
              .how("Where two rods share a pin, one reading is for both.")
              .between(0.02, 3)
              .source(Sources.TM_354_RODS),
          ReadingPlan.of(Feature.CRANK, "thrust-clearance", "Thrust clearance", Derivation.EACH)
              .at("front", "Front washer: feeler, crank pried to the front")
              .at("rear", "Rear washer: feeler, crank pried to the rear")
              .between(0, 3),
          ReadingPlan.of(Feature.CRANK, "thrust-washer", "Thrust washer thickness", Derivation.EACH)
              .at("front-upper", "Front washer, upper half")
              .at("front-lower", "Front washer, lower half")
              .at("rear-upper", "Rear washer, upper half")
              .at("rear-lower", "Rear washer, lower half")
              .how("Flanged shells: the thickness of each flange.")
              .between(0.5, 10),
          ReadingPlan.of(Feature.MAIN_JOURNAL, "main-bow", "Bow at each main", Derivation.HALF)
              .at("swing", "Dial on this main, crank in V-blocks, one turn")
              .how("The bow is half of the dial's swing.")
              .between(0, 3)
              .source(Sources.TM_653),
          ReadingPlan.of(Feature.OIL_PUMP, "pump-cover", "Pump gears to cover", Derivation.VALUE)
              .at("end", "Straightedge over the body; feeler to the gears")
              .between(0, 2)
              .source(Sources.TM_354_PUMP),
          ReadingPlan.of(Feature.OIL_PUMP, "pump-body", "Pump gears to body", Derivation.EACH)
              .at("drive", "Drive gear or outer rotor to the body")
              .at("idler", "Idler gear to the body; a rotor pump: again")
              .between(0, 2)
              .source(Sources.TM_354_PUMP),
          ReadingPlan.of(Feature.OIL_PUMP, "pump-tip", "Pump rotor tips", Derivation.VALUE)
              .at("tip", "Tip of the inner rotor to the outer one")
              .how("For rotor pumps alone.")
              .between(0, 2),
          ReadingPlan.of(
                  Feature.OIL_PUMP, "relief-free", "Relief spring free height", Derivation.VALUE)
              .at("height", "Free height of the relief spring")
              .between(10, 150),
          ReadingPlan.of(Feature.OIL_PUMP, "relief-load", "Relief spring load", Derivation.VALUE)
              .at(new Station("load", "Load at the height of the manual", Dimension.FORCE))
              .how("Write the height in the note.")
              .between(1, 500),
          ReadingPlan.of(
                  Feature.VALVE_SEAT,
                  "installed-height",
                  "Installed spring height",
                  Derivation.SHIM)
              .at("height", "Spring seat to the retainer, valve closed")
              .how("Valve, retainer and keepers in, without the spring.")
              .between(20, 80)
              .source(Sources.TM_289),
          ReadingPlan.of(Feature.VALVE_SEAT, "seat-width", "Valve seat width", Derivation.SPREAD)
              .at("one", "Width of the seat")
              .at("two", "The same, 120° further")
              .at("three", "The same, 240° further")
              .between(0.2, 8)
              .source(Sources.TM_653),
          ReadingPlan.of(Feature.VALVE_SEAT, "seat-runout", "Valve seat runout", Derivation.VALUE)
              .at("swing", "Dial on the seat, turned once in the guide")
              .between(0, 1),
          ReadingPlan.of(Feature.VALVE_SEAT, "stem-height", "Valve stem height", Derivation.VALUE)
              .at("height", "Spring seat to the tip, valve closed")
              .between(20, 150),
          ReadingPlan.of(Feature.BORE, "deck-height", "Piston below the deck", Derivation.EACH)
              .at("front", "Over the pin, front side, at top dead center")
              .at("rear", "Over the pin, rear side, at top dead center")
              .how("A piston above the deck reads less than 0.")
              .between(-5, 10)
              .source(Sources.TM_212),
          ReadingPlan.of(Feature.RINGS, "ring-side", "Ring side clearance", Derivation.EACH)
              .at("top", "Top ring in its groove")
              .at("second", "Second ring in its groove")
              .at("oil", "Oil ring in its groove")
              .how("New ring, clean groove, feeler all the way round.")
              .between(0, 1)
              .source(Sources.TM_653),
          ReadingPlan.of(Feature.FLYWHEEL, "flywheel-runout", "Flywheel runout", Derivation.EACH)
              .at("face", "Dial on the clutch face, turned once")
              .at("edge", "Dial on its edge or bore, turned once")
              .how("Hold the crank against its thrust washer.")
              .between(0, 3)
              .source(Sources.TM_653),
          ReadingPlan.of(Feature.DAMPER, "damper-runout", "Damper runout", Derivation.EACH)
              .at("face", "Dial on its face, turned once")
              .at("rim", "Dial on its rim, turned once")
              .how("Hold the crank against its thrust washer.")
              .between(0, 5),
          ReadingPlan.of(Feature.CORE_PLUGS, "core-plug", "Core plug in its hole", Derivation.PRESS)
              .at("around", "The loosest hole, largest reading")
              .at("inside", "The plug for it, smallest reading")
              .between(8, 90));

  private AssemblyPlans() {}
}
