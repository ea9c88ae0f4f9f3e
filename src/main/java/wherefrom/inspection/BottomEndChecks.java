package wherefrom.inspection;

import static wherefrom.inspection.Sources.TM_247;
import static wherefrom.inspection.Sources.TM_256;
import static wherefrom.inspection.Sources.TM_346;
import static wherefrom.inspection.Sources.TM_359;
import static wherefrom.inspection.Sources.TM_653;

import java.util.List;
import wherefrom.parts.PartKind;

/** Shells, rods, caps, pistons and cam bearings. */
final class BottomEndChecks {
  private static final String SHELL_PASS = "An even gray band over two thirds of the face.";
  private static final String SHELL_SUSPECT = "Light scores, or a band at one edge.";
  private static final String SHELL_FAIL = "Copper shows, grit in it, flaked, wiped, or blue.";

  static final List<Check> ROWS =
      List.of(
          Check.of(PartKind.ROD_SHELL, "rod-shell-face", "How does the face look?")
              .how("Wipe it and look. Never use a scraper.", "The face that the journal runs on.")
              .tells(SHELL_PASS, SHELL_SUSPECT, SHELL_FAIL)
              .settledBy("rod-shell-wall")
              .beforeWashing(),
          Check.of(PartKind.ROD_SHELL, "rod-shell-back", "How does the back look?")
              .how("Turn it over.", "The back, where it lies in its housing.")
              .tells("Even and dull.", "A few bright spots.", "Shiny all over: it has moved.")
              .source(TM_346),
          Check.of(PartKind.MAIN_SHELL, "main-shell-face", "How does the face look?")
              .how(
                  "Wipe it and look. Never use a scraper. The shell in the cap wears first.",
                  "The face that the journal runs on.")
              .tells(SHELL_PASS, SHELL_SUSPECT, SHELL_FAIL)
              .source(TM_346)
              .settledBy("main-shell-wall")
              .beforeWashing(),
          Check.of(PartKind.MAIN_SHELL, "main-shell-back", "How does the back look?")
              .how("Turn it over.", "The back, where it lies in its housing.")
              .tells("Even and dull.", "A few bright spots.", "Shiny all over: it has moved.")
              .source(TM_346),
          Check.of(PartKind.ROD, "rod-mark", "Do rod and cap carry the same number?")
              .how("Read the numbers on both sides of the parting line.", "Rod and cap.")
              .tells("Same number, same side.", "No number to read.", "Different numbers.")
              .source(TM_247),
          Check.of(PartKind.ROD, "rod-bend", "Is it straight?")
              .how("Look for skirt wear in a slant; bend and twist fixture.", "Piston and rod.")
              .tells("Even skirt wear.", "A slight slant.", "Plainly bent or twisted.")
              .source(TM_653),
          Check.of(PartKind.ROD_CAP, "rod-cap-mark", "Is it this rod's cap?")
              .how("Read the number; try the fit without force.", "The parting face.")
              .tells("Number agrees, faces clean.", "No number.", "Other number, or filed.")
              .source(TM_256),
          Check.of(PartKind.MAIN_CAP, "main-cap-mark", "Number and arrow")
              .how("Read the number and the arrow; stamp it if there is none.", "Outside face.")
              .tells("Number and arrow agree.", "Nothing to read.", "Other number, or cracked.")
              .source(TM_359),
          Check.of(PartKind.PISTON, "piston-skirt", "Skirt and ring lands")
              .how("Look before washing; draw a fingernail across.", "Skirt, lands, pin holes.")
              .tells("Even, light marks.", "Scuffed.", "Cracked, broken land, or seized.")
              .printed("skirt to bore 0.0010-0.0018 in new", TM_653)
              .settledBy("piston-diameter")
              .beforeWashing(),
          Check.of(PartKind.PISTON, "piston-crown", "Valve marks on the crown")
              .how("Look at the crown before it is scraped.", "The top.")
              .tells("None.", "A faint touch.", "A dent from a valve.")
              .beforeWashing(),
          Check.of(PartKind.CAM_BEARING, "cam-bearing-face", "How does the face look?")
              .how("Look with a lamp.", "The face that the cam runs on, and the oil hole.")
              .tells("Even gray, hole in line.", "Copper shows.", "Scored, wiped, or turned."),
          Check.of(Feature.OIL_PUMP, "oil-pump-look", "Are gears and body unscored?")
              .how("Open its cover; look at gears, body and cover.", "Tips, body wall, cover face.")
              .tells(
                  "Smooth, no step.", "Fine lines in cover or body.", "Scored, chipped, a step."),
          Check.of(Feature.FLYWHEEL, "flywheel-face", "Any crack or blue spot?")
              .how("Clean the face; look under a bright light.", "Face, bolt holes, ring gear.")
              .tells(
                  "Even, no cracks.", "Fine heat lines, a chewed tooth.", "A crack, or deep blue."),
          Check.of(Feature.DAMPER, "damper-rubber", "Is the rubber sound?")
              .how("Look at both sides; feel the seal's track.", "The rubber, the hub.")
              .tells("Flush all around.", "Small cracks, or a groove.", "The ring has moved."));

  private BottomEndChecks() {}
}
