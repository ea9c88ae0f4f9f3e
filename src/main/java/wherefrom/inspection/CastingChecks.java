package wherefrom.inspection;

import static wherefrom.inspection.Sources.FAA_32;
import static wherefrom.inspection.Sources.MEMORY;
import static wherefrom.inspection.Sources.RING_TIP;
import static wherefrom.inspection.Sources.TM_219;
import static wherefrom.inspection.Sources.TM_237;
import static wherefrom.inspection.Sources.TM_262;
import static wherefrom.inspection.Sources.TM_300;
import static wherefrom.inspection.Sources.TM_3820;
import static wherefrom.inspection.Sources.TM_549;
import static wherefrom.inspection.Sources.TM_604;
import static wherefrom.inspection.Sources.TM_653;

import java.util.List;

/** Block, head, crank, cam drive and oil. */
final class CastingChecks {
  static final List<Check> ROWS =
      List.of(
          Check.of(Feature.BORE, "bore-look", "Ridge and scuffs")
              .how(
                  "Feel the top for a ridge; look all around.", "The top inch and the thrust side.")
              .tells("No ridge, crosshatch shows.", "A ridge, or light scuffs.", "Deep scores.")
              .printed("taper and out-of-round 0.0015 in (bore of a liner engine)", TM_300)
              .printed("0.002 in (another block for liners)", TM_219)
              .printed("about 0.003 in out-of-round, 0.005-0.008 in taper to re-ring", MEMORY)
              .settledBy("bore"),
          Check.of(Feature.RINGS, "ring-look", "Rings")
              .how("Square each ring in its bore with a piston. Feeler in the gap.", "The gap.")
              .tells("Whole, gap as specified.", "A wide gap.", "Broken or stuck.")
              .printed("top 0.0098-0.0157 in, limit 0.039 in", TM_653)
              .printed("at least 0.0035 in per inch of bore; over 0.008 a worn bore", RING_TIP)
              .settledBy("ring-gap"),
          Check.of(Feature.ROD_JOURNAL, "rod-journal-look", "Rod journal")
              .how("Draw a fingernail along it.", "All around, clear of the fillets.")
              .tells("Nothing to feel.", "The nail catches.", "Deep scores, blue, or cracked.")
              .printed("out-of-round and taper 0.0005 in", TM_262)
              .printed("taper 0.0005 in, out-of-round 0.002 in", TM_604)
              .settledBy("rod-journal"),
          Check.of(Feature.MAIN_JOURNAL, "main-journal-look", "Main journal")
              .how("Draw a fingernail along it.", "All around, clear of the fillets.")
              .tells("Nothing to feel.", "The nail catches.", "Deep scores, blue, or cracked.")
              .printed("wear limit 0.0012 in", TM_653)
              .settledBy("main-journal"),
          Check.of(Feature.ROD_HOUSING, "rod-housing-look", "Big-end housing")
              .how("Shells out: look for fretting and turned-shell marks.", "Inside the big end.")
              .tells("Clean.", "Fretting.", "A shell has turned in it.")
              .settledBy("rod-housing"),
          Check.of(Feature.MAIN_HOUSING, "main-housing-look", "Main housing")
              .how("Shells out: look for fretting and turned-shell marks.", "Block and cap.")
              .tells("Clean.", "Fretting.", "A shell has turned in it.")
              .settledBy("main-housing"),
          Check.of(Feature.HEAD, "head-flat", "Head: flat? cracks? leak tracks?")
              .how("Straightedge and feeler on six lines.", "The gasket face.")
              .tells("No feeler goes under.", "A leak track.", "A crack, or bowed.")
              .printed("0.003 in across, 0.005 in along", TM_549)
              .printed("0.004 in", TM_653)
              .printed("0.006 in along, 0.004 in across", TM_3820)
              .source(TM_549)
              .settledBy("head-flatness"),
          Check.of(Feature.DECK, "deck-flat", "Deck: flat? cracks? leak tracks?")
              .how("Straightedge and feeler on six lines.", "The gasket face of the block.")
              .tells("No feeler goes under.", "A leak track.", "A crack, or bowed.")
              .printed("0.003 in, 0.006 in in all", TM_300)
              .source(TM_300)
              .settledBy("deck-flatness"),
          Check.of(Feature.TIMING, "gear-teeth", "Gear teeth")
              .how("Flashlight and fingernail.", "Every tooth, the plastic ones above all.")
              .tells(
                  "Metal, all whole.",
                  "Plastic or fiber teeth, still whole: they age. Buy the timing set new.",
                  "Cracked or missing teeth."),
          Check.of(Feature.TIMING, "chain-slack", "Chain slack")
              .how("Push the chain in and pull it out at mid-span.", "The slack side.")
              .tells("Hardly moves.", "Moves visibly.", "Beyond the manual's limit.")
              .printed("total deflection at most 0.810 in", TM_237)
              .source(TM_237)
              .settledBy("chain-deflection"),
          Check.of(Feature.CRANK, "crank-look", "Crank: fillets, snout, threads, bow")
              .how("Look; dial at the center journal in V-blocks.", "Fillets and oil holes.")
              .tells("Clean.", "A mark in a fillet.", "A crack.")
              .printed("bend is half of the reading", TM_653)
              .source(TM_653)
              .settledBy("crank-bow"),
          Check.of(Feature.CAMSHAFT, "cam-look", "Cam: journals and gear")
              .how("Look at each journal and at the distributor gear.", "Journals, gear teeth.")
              .tells("Even.", "Light scores.", "Scored deep, or teeth worn to points.")
              .settledBy("cam-end-play"),
          Check.of(Feature.OIL, "oil-look", "What is in the oil?")
              .how(
                  "Drain through a clean cloth. Cut the filter open. Wipe the magnet.",
                  "Cloth, filter pleats, magnetic plug.")
              .tells("Nothing but black oil.", "Fine gray paste.", "Flakes, glitter or crumbs.")
              .source(FAA_32)
              .beforeWashing(),
          Check.of(Feature.CORE_PLUGS, "core-plugs-look", "Are all core plugs sound?")
              .how("Look at each for rust and wet marks.", "Both sides and the ends of the block.")
              .tells(
                  "Dry, no rust.",
                  "Rust, or a stain below one.",
                  "Wet, loose, or rusted through."));

  private CastingChecks() {}
}
