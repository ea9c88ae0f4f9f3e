package wherefrom.inspection;

import static wherefrom.inspection.Sources.OVERHAUL_MANUAL;
import static wherefrom.inspection.Sources.TM_225;
import static wherefrom.inspection.Sources.TM_229;
import static wherefrom.inspection.Sources.TM_253;
import static wherefrom.inspection.Sources.TM_259;
import static wherefrom.inspection.Sources.TM_653;

import java.util.List;
import wherefrom.parts.PartKind;

/** Rockers, pivots, studs, pushrods, lifters and lobes. */
final class RockerChecks {
  static final List<Check> ROWS =
      List.of(
          Check.of(PartKind.PUSHROD, "pushrod-roll", "Is it straight?")
              .how(
                  "Roll it on a flat plate or a sheet of glass.",
                  "Under the middle of the pushrod.")
              .tells(
                  "It rolls evenly; no light flickers under it.",
                  "It hops a little, or light flickers under the middle.",
                  "You can see the bow. Never straighten it.")
              .printed("limit 0.002 in", TM_653)
              .printed("0.008 in at most", TM_253)
              .printed("0.035 in on a large diesel", TM_225)
              .source(OVERHAUL_MANUAL)
              .settledBy("pushrod-runout"),
          Check.of(PartKind.PUSHROD, "pushrod-ends", "Are both ends sound?")
              .how("Look at both ends. Feel with a fingernail. Try it in its mate.", "Both tips.")
              .tells(
                  "A polished ring on the ball.",
                  "A step that the nail just feels.",
                  "Parallel lines, a nipple, a flat, or a blocked oil hole.")
              .printed("at least 80 % blue contact", TM_225),
          Check.of(PartKind.PUSHROD, "pushrod-oilway", "Can you see through it?")
              .how("Hold it to the light, or blow clean air through.", "The oil hole in each end.")
              .tells("Light all the way.", "Only a glimmer.", "Blocked, and it won't come clear."),
          Check.of(PartKind.ROCKER, "rocker-faces", "Cup, tip and ball seat")
              .how("Look, and draw a fingernail across.", "The cup, the tip, the seat inside.")
              .tells(
                  "A bright line, nothing to feel.",
                  "A slight step.",
                  "A step or a hollow, blue from heat, torn metal.")
              .printed("cups or concave wear: replace", TM_259),
          Check.of(PartKind.ROCKER, "rocker-cracks", "Any crack?")
              .how("Clean it and look under a bright light.", "Around the seat and the slot.")
              .tells("None.", "A line that might be one.", "A crack."),
          Check.of(PartKind.PIVOT, "pivot-face", "Is the bearing face smooth?")
              .how("Rub it with a finger, then rock it in its rocker.", "The rounded face.")
              .tells("Smooth and bright.", "Fine scratches.", "Scored or blue: replace the pair."),
          Check.of(Feature.STUD, "stud-line", "Does one stud stand high?")
              .how(
                  "Lay a straightedge over the stud tops; measure each height. Bolts, no studs?"
                      + " Skip it.",
                  "The tops, and the ring at each stud's foot.")
              .tells(
                  "All touch the straightedge.",
                  "One stands 0.005 in or more above its neighbors. Or there is a shiny ring at"
                      + " its foot.",
                  "One stands 0.010 in or more above: it is pulling out.")
              .settledBy("stud-height"),
          Check.of(PartKind.LIFTER, "lifter-foot", "Is the foot still domed?")
              .how(
                  "Put two feet together: they must rock. Then lay a straightedge on.",
                  "The face that runs on the cam.")
              .tells(
                  "It rocks; even gray rings.",
                  "Flat: it doesn't rock.",
                  "Hollow, pits, or no sign that it spins.")
              .printed("the foot must be convex", OVERHAUL_MANUAL)
              .source(OVERHAUL_MANUAL)
              .settledBy("lifter-crown"),
          Check.of(PartKind.LIFTER, "lifter-sink", "Does it sink slowly?")
              .how("Oil it and let it sink into its own bore.", "Lifter and bore.")
              .tells("It sinks slowly.", "It drops fast.", "It sticks or rattles.")
              .printed("fit 0.0006 to 0.0020 in, limit 0.0039 in", TM_653)
              .source(TM_653)
              .settledBy("lifter-diameter"),
          Check.of(PartKind.LIFTER, "lifter-wheel", "Wheel and needles")
              .how("Turn the wheel slowly; feel for play.", "The wheel and its axle.")
              .tells("Smooth, no play.", "It clicks once.", "Pits, or rough."),
          Check.of(Feature.LIFTER_BORE, "lifter-bore-look", "Is the lifter bore clean?")
              .how("Look with a lamp; feel with a finger.", "All around the bore.")
              .tells("Smooth.", "Light scratches.", "Scored deep, or cracked."),
          Check.of(Feature.LOBE, "lobe-look", "Is the lobe whole?")
              .how("Turn the cam under a lamp; feel the nose.", "Nose and edges of the lobe.")
              .tells("Even sheen across.", "Scuffed at one edge.", "Pitted, or plainly low.")
              .printed("lift 0.2935 in, wear limit 0.020 in", TM_229)
              .source(TM_229)
              .settledBy("lobe-lift"),
          Check.of(Feature.ROCKER_SHAFT, "rocker-shaft-wear", "Is the shaft worn here?")
              .how("Draw a fingernail from beside the rocker to under it.", "The loaded side.")
              .tells("No step.", "A step that the nail just feels.", "A step, scores, or blue."),
          Check.of(Feature.CAM_JOURNAL, "cam-journal-face", "Is the cam journal smooth?")
              .how("Wipe it dry and draw a fingernail across.", "All around the journal.")
              .tells("Smooth, even gray.", "Lines that the nail just feels.", "Grooves, or blue."));

  private RockerChecks() {}
}
