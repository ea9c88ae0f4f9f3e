package wherefrom.job;

import java.util.Arrays;
import java.util.List;

/**
 * What can hurt a person or spoil a part, by the step where it can. The source stands beside each
 * caution on the screen too.
 */
public enum Caution {
  USED_OIL("Used oil: wear gloves, wash it off your skin.", "ATSDR, used crankcase oil", "1245"),
  OLD_GASKETS(
      "Old gaskets may hold asbestos: wipe wet, never blow or brush dry.",
      "EPA brake and clutch brochure 2007; 29 CFR 1910.1001 App. F",
      "13"),
  LIFTER_RISES(
      "A stuck lifter may come up with its pushrod: look before you pull.",
      "common practice, no source",
      "1"),
  CRANK_STILL(
      "Do not turn the crank while lifters are half out.", "common practice, no source", "2"),
  SPRINGS(
      "Valve springs are loaded and keepers fly: wear eye protection.",
      "TM 5-1940-322-24 WP 0160-4",
      "3"),
  ROD_BOLTS(
      "Put sleeves on the rod bolts: they scratch the crank. Refit each cap at once.",
      "common practice, no source",
      "4"),
  SHARP_EDGES("Ring edges are sharp.", "common practice, no source", "4"),
  HOIST(
      "Lift the crank with rated gear, all others clear. Free no hang-up by hand.",
      "TM 5-4320-305-24 3-23",
      "5"),
  SOLVENT("Solvent: no flame, fresh air, gloves, eyes.", "TM 5-4210-220-34", "0"),
  COMPRESSED_AIR(
      "Compressed air under 30 psi with a chip guard and eye protection, never at skin.",
      "29 CFR 1910.242(b)",
      "0"),
  HOT_TANK(
      "Hot tank: lye burns and attacks aluminium.",
      "from memory, unverified; limit in 29 CFR 1910.1000 Table Z-1",
      "0");

  private static final int WASH = 0;

  private final String sentence;
  private final String source;

  /** One digit for each stage. */
  private final String stages;

  Caution(String sentence, String source, String stages) {
    this.sentence = sentence;
    this.source = source;
    this.stages = stages;
  }

  public String sentence() {
    return sentence;
  }

  /** A published source, or "common practice, no source". */
  public String source() {
    return source;
  }

  /** The cautions of a stage of taking apart, as {@link wherefrom.parts.PartKind#stage} counts. */
  public static List<Caution> atStage(int stage) {
    return Arrays.stream(values())
        .filter(caution -> caution.stages.contains(Integer.toString(stage)))
        .toList();
  }

  /** The cautions of washing. */
  public static List<Caution> atWashing() {
    return atStage(WASH);
  }
}
