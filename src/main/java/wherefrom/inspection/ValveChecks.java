package wherefrom.inspection;

import static wherefrom.inspection.Sources.NAVY_14076;
import static wherefrom.inspection.Sources.TM_247_SPRINGS;
import static wherefrom.inspection.Sources.TM_254;
import static wherefrom.inspection.Sources.TM_322;
import static wherefrom.inspection.Sources.TM_653;
import static wherefrom.inspection.Sources.TM_671;

import java.util.List;
import wherefrom.parts.PartKind;

/** Valves, springs, retainers, keepers, seats and guides. */
final class ValveChecks {
  static final List<Check> ROWS =
      List.of(
          Check.of(Feature.VALVE_TIP, "tip-pattern", "Where does the rocker run on the tip?")
              .how("Color the tip, set the lash, turn the crank twice, look.", "The shiny band.")
              .tells("Narrow, in the middle.", "Wide, or off the middle.", "Runs to an edge.")
              .source(Sources.CIRCLE_TRACK_TIP),
          Check.of(PartKind.VALVE, "valve-tip", "Is the tip square?")
              .how("Look; draw a keeper over the groove.", "The stem's end and the keeper groove.")
              .tells(
                  "Flat and bright.",
                  "A burr: dress it before the valve is drawn through its guide.",
                  "Mushroomed. Do not drive it through the guide."),
          Check.of(PartKind.VALVE, "valve-stem", "Does the stem wobble?")
              .how("Hold it a little open and wiggle; feel for a ridge.", "Along the stem.")
              .tells("Hardly any play, no ridge.", "A ridge the nail feels.", "Loose, or bent.")
              .printed("new 0.0011-0.0012 in, limit 0.0039 in", TM_653)
              .printed("exhaust: new 0.0023-0.0024 in, limit 0.0059 in", TM_653)
              .printed("stem worn 0.002 in past its limit: replace", TM_671)
              .source(TM_653)
              .settledBy("stem-diameter"),
          Check.of(PartKind.VALVE, "valve-margin", "Is the rim thick enough?")
              .how("Caliper over the rim.", "Between the seat face and the head's top.")
              .tells("An even, thick rim.", "Thin or uneven.", "A knife edge, or burned.")
              .printed("at least 0.031 in", TM_322)
              .printed("at least half of new", TM_671)
              .settledBy("valve-margin"),
          Check.of(PartKind.SPRING, "spring-square", "Does it stand square?")
              .how("Stand it on a plate against a square; turn it.", "The gap at the top coil.")
              .tells("No gap.", "A small gap.", "It leans over.")
              .printed("lean at most 0.059 in", TM_653)
              .printed("lean at most 0.039-0.040 in", TM_322 + "; " + TM_254)
              .source(TM_653)
              .settledBy("spring-square"),
          Check.of(PartKind.SPRING, "spring-wire", "Is the wire clean?")
              .how("Turn it under a lamp.", "Every coil.")
              .tells("Clean.", "Light rust.", "Pitted, nicked, cracked or broken."),
          Check.of(PartKind.SPRING, "spring-height", "Is it as tall as the others?")
              .how("Stand all of them in a row under a straightedge.", "The tops.")
              .tells("All level.", "One a little short.", "One plainly short.")
              .printed("free length at most 3 % short", NAVY_14076)
              .printed("load lost more than 10 %: replace", TM_247_SPRINGS)
              .source(NAVY_14076)
              .settledBy("spring-free"),
          Check.of(PartKind.RETAINER, "retainer-cone", "Is the cone clean?")
              .how("Look inside, feel with a fingernail.", "The cone and the spring's seat.")
              .tells("Smooth.", "A step.", "Pulled through, or cracked."),
          Check.of(PartKind.KEEPERS, "keeper-beads", "Are both halves whole?")
              .how("Look at both; try them in the groove.", "The beads inside.")
              .tells("Whole, and they seat.", "Shiny flats.", "Chipped or worn: always new."),
          Check.of(Feature.VALVE_SEAT, "seat-look", "Is the seat even?")
              .how("Blue it lightly and turn the valve in it.", "The ring in the head.")
              .tells("An unbroken ring.", "Wide or patchy.", "Burned, cracked or sunk.")
              .printed("valve face true to its stem within 0.002 in", TM_671)
              .source(TM_671));

  private ValveChecks() {}
}
