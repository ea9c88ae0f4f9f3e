package wherefrom.inspection;

import static wherefrom.inspection.Sources.NAVY_14076;
import static wherefrom.inspection.Sources.TM_359;

import java.util.List;

/** Whether block and heads hold: cracks, pressure, threads, dowels, plugs, oil galleries. */
final class CastingTests {
  private static final String IN_WATER = "40 psi on the jacket, in water of 180 to 200 °F";

  static final List<Check> ROWS =
      List.of(
          Check.of(Feature.BLOCK, "block-crack", "Any crack in the block?")
              .how(
                  "Clean, then dye or magnetic powder, by the machine shop.",
                  "Decks, between bores, mains, lifter valley, outside of the jacket.")
              .tells("No crack shows.", "A line that may be one.", "A crack.")
              .source(NAVY_14076),
          Check.of(Feature.BLOCK, "block-pressure", "Does the water jacket hold?")
              .how("Openings sealed, warm water, low air pressure. Machine shop.", "Bubbles.")
              .tells("Holds, no bubbles.", "Loses a little, no bubbles.", "Bubbles, or oil wet.")
              .printed(IN_WATER, TM_359)
              .source(TM_359),
          Check.of(Feature.BLOCK, "block-threads", "Are all threads sound?")
              .how("Run a bolt in by hand, to the bottom. Note each repair.", "Head and cap holes.")
              .tells(
                  "Each runs in by hand.", "Tight or dirty.", "Pulled, or repaired: note where."),
          Check.of(Feature.BLOCK, "block-dowels", "Are all dowels there, and tight?")
              .how("Count them, push each with a finger.", "Decks, rear face, front, main caps.")
              .tells("All there, tight, no burr.", "Loose, or a burr.", "Missing or bent."),
          Check.of(Feature.BLOCK, "gallery-plugs", "Gallery plugs out, then new ones in?")
              .how("All out before washing; new ones in after it, sealed.", "Front, rear, side.")
              .tells("Out for washing, new ones in, counted.", "Not all out.", "One is missing."),
          Check.of(Feature.BLOCK, "galleries", "Galleries brushed until clean?")
              .how("Brush, hot soap, rinse, blow, then a white cloth.", "Every drilled passage.")
              .tells("The cloth stays white.", "Gray.", "Chips come out."),
          Check.of(Feature.HEAD, "head-crack", "Any crack in the head?")
              .how("Clean, then dye or magnetic powder, by the machine shop.", "Face and ports.")
              .tells("No crack shows.", "A line that may be one.", "A crack.")
              .source(NAVY_14076),
          Check.of(Feature.HEAD, "head-pressure", "Do the head's passages hold?")
              .how("Openings sealed, warm water, low air pressure. Machine shop.", "Bubbles.")
              .tells("Holds, no bubbles.", "Loses a little, no bubbles.", "Bubbles.")
              .source(TM_359),
          Check.of(Feature.HEAD, "head-threads", "Are the head's threads sound?")
              .how("Run a bolt in by hand, to the bottom.", "Studs, manifolds, covers.")
              .tells(
                  "Each runs in by hand.", "Tight or dirty.", "Pulled, or repaired: note where."),
          Check.of(Feature.CHAMBER, "chamber-crack", "Cracks between seats or to the plug?")
              .how("Clean and dry. Look with a lens; then dye.", "Between the seats, to the plug.")
              .tells("No line.", "A line that may be one.", "A crack."),
          Check.of(Feature.CHAMBER, "plug-thread", "Is the plug's thread sound?")
              .how("Turn a plug in by hand, seat it, look at its thread.", "The plug hole.")
              .tells("Runs in by hand.", "Tight.", "Pulled, or an insert: note it."),
          Check.of(Feature.BORE, "bore-crack", "Crack in the bore or to the deck?")
              .how("Clean and dry. Look with a lens; then dye.", "Top of the bore, water holes.")
              .tells("No line.", "A line that may be one.", "A crack.")
              .source(NAVY_14076),
          Check.of(Feature.MAIN_HOUSING, "main-threads", "Cap threads, dowels, register?")
              .how("Bolts in by hand. The cap snaps into its register.", "Both holes of each main.")
              .tells("By hand; the cap is snug.", "Tight, or a loose cap.", "Pulled or repaired."));

  private CastingTests() {}
}
