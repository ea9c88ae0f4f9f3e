package wherefrom.job;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import wherefrom.parts.BigPartKind;
import wherefrom.text.Words;

/**
 * What can hurt a person or spoil a part, by the step where it can. The source stands beside each
 * caution on the screen too.
 */
public enum Caution {
  USED_OIL(
      "Used oil: wear gloves. Wash it off your skin.",
      "ATSDR, Toxicological Profile for Used Mineral-Based Crankcase Oil, 1997",
      "1245o"),
  OLD_GASKETS(
      "Old gaskets may hold asbestos. Wipe wet. Never blow or brush dry.",
      "EPA, Preventing Asbestos Exposure Among Brake and Clutch Repair Workers, 2007;"
          + " 29 CFR 1910.1001 App. F",
      "13"),
  COLD_AND_DRY(
      "Engine cold. Battery off, minus first. Drain coolant and fuel away from flames.",
      "common practice, no source",
      "1"),
  ROCKER_LOAD(
      "Rockers over open valves are under load. Loosen their nuts in small steps.",
      "common practice, no source",
      "1"),
  LIFTER_RISES(
      "A stuck lifter may come up with its pushrod. Look before you pull.",
      "common practice, no source",
      "1"),
  MUSHROOM_FEET(
      "A lifter that will not come up? A wide foot comes out below, cam out first.",
      "common practice, no source",
      "2"),
  CRANK_STILL(
      "Do not turn the crank while lifters are half out.", "common practice, no source", "2"),
  SPRINGS(
      "Valve springs are loaded and keepers fly. Wear eye protection.",
      "TM 5-1940-322-24, WP 0160-4",
      "3"),
  RIDGE(
      "A ridge at the top of the bore? Have it cut before a piston is pushed up.",
      "common practice, no source",
      "4"),
  ROD_BOLTS(
      "Put sleeves on the rod bolts: they scratch the crank. Refit each cap at once.",
      "common practice, no source",
      "4"),
  SHARP_EDGES(
      "Ring edges are sharp. Do not run a finger along them.", "common practice, no source", "4"),
  HOIST(
      "Lift the crank with rated gear. Keep everyone clear. If it snags, lower it."
          + " Never free it by hand.",
      "TM 5-4320-305-24, 3-23",
      "5"),
  DAMPER(
      "Pull the damper at its hub, never at the ring. Put a bolt in the crank's"
          + " nose for the puller. No jaw on the ring.",
      "common practice, no source",
      "456"),
  PINCH(
      "No gloves near turning parts. Keep fingers out of bores and gears.",
      "common practice, no source",
      "456"),
  HOT_PARTS(
      "Heated parts burn skin. Use tongs. Keep rags and solvent away.",
      "common practice, no source",
      "46"),
  USED_FILTER(
      "Hot oil burns: wear gloves. Let a punched spin-on filter drain, then cut it open."
          + " Hand in oil and filter.",
      "40 CFR 279; 40 CFR 261.4(b)(13)",
      "o"),
  TORQUE(
      "Torque, order and lubricant: your engine's service information decides."
          + " Clean the threads. Pull steadily. Never loosen with the torque wrench. Set"
          + " it back to low.",
      "NAVEDTRA 14113, torque wrenches",
      ""),
  FIRST_START(
      "Have a fire extinguisher in reach. Look for fuel leaks before and while it runs.",
      "common practice, no source",
      "sr"),
  EXHAUST(
      "Start it in the open, or lead the exhaust out. Its gas kills without a smell.",
      "common practice, no source",
      "sr"),
  ENGINE_OUTRANKS(
      "Your engine's service information outranks this list. So does the cam maker's sheet.",
      "common practice, no source",
      "s"),
  FAN_AND_BELTS(
      "Keep hands, sleeves and hair away from fan and belts.", "common practice, no source", "sbr"),
  NO_OIL_PRESSURE(
      "No oil pressure within 10 seconds, or it falls: ignition off.",
      "NAVEDTRA 14050, ch. 3, operational testing",
      "r"),
  NO_IDLE(
      "New flat lifters: straight to speed, never at idle. Vary the speed.",
      "common practice, no source",
      "r"),
  STAY(
      "Stay with it. Noise, heat, smoke, any leak: ignition off."
          + " Fire: ignition and fuel off, then the extinguisher.",
      "common practice, no source",
      "r"),
  CRANKING(
      "Compression test: ignition off, fuel shut off, throttle wide open. Hands clear"
          + " of belts and fan while it cranks. No flame near open plug holes.",
      "TM 1-1500-204-23-1, cylinder compression test; TM 5-4210-230-14&P-1, Addendum 2",
      "b"),
  LEAK_AIR(
      "Air in a cylinder can turn the crank. Open the air slowly, at top dead center."
          + " Leave no wrench on the crank. Hands clear of belts and fan.",
      "FAA AC 43.13-1B, Acceptable Methods, Techniques, and Practices, 1998, 8-14",
      "b"),
  PRESSURE_TEST(
      "Pressure test: plates and plugs can fly. Let the machine shop do it.",
      "common practice, no source",
      "c"),
  RADIATOR_CAP("Take the radiator cap off a cold engine only.", "common practice, no source", "b"),
  EXHAUST_GAS(
      "Run it outdoors, or lead the exhaust out. Hot parts burn.",
      "common practice, no source",
      "b"),
  SOLVENT("Solvent: no flame, fresh air, gloves, eye protection.", "TM 5-4210-220-34, 2-19", "0c"),
  COMPRESSED_AIR(
      "Compressed air: under 30 psi, with a chip guard and eye protection. Never at skin.",
      "29 CFR 1910.242(b)",
      "0c"),
  CLUTCH_DUST(
      "Clutch dust may hold asbestos. Wipe wet. Never blow or brush dry.",
      "EPA, Preventing Asbestos Exposure Among Brake and Clutch Repair Workers, 2007;"
          + " 29 CFR 1910.1001 App. F",
      ""),
  HEAVY(
      "It is heavy: two people or a hoist. Hold it while the last bolt comes out.",
      "common practice, no source",
      ""),
  HOT_TANK(
      "Hot tank: lye burns skin and attacks aluminum.",
      "from memory, unverified; limit in 29 CFR 1910.1000 Table Z-1",
      "0");

  private static final String WASH = "0";
  private static final String OIL = "o";
  private static final String START = "s";
  private static final String TOGETHER = "b";
  private static final String CASTINGS = "c";
  private static final String RUN_IN = "r";

  private final String sentence;
  private final String source;

  /**
   * One digit for each stage of taking apart, a letter for each other step; none where a screen of
   * its own shows it.
   */
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

  /** Its sentence, then where that comes from. */
  public String sourced() {
    return sentence + " " + Words.source(source) + ".";
  }

  /** The cautions of a stage of taking apart, as {@link wherefrom.parts.PartKind#stage} counts. */
  public static List<Caution> atStage(int stage) {
    return at(Integer.toString(stage));
  }

  /** Those of a stage and of a big part that comes off then, each once. */
  public static List<Caution> atStage(int stage, BigPartKind part) {
    return Stream.concat(of(part).stream(), atStage(stage).stream()).distinct().toList();
  }

  /** The cautions of a big part by itself, whenever it is handled. */
  public static List<Caution> of(BigPartKind part) {
    return switch (part) {
      case DAMPER -> List.of(DAMPER);
      case CRANKSHAFT -> List.of(HOIST);
      case CAMSHAFT, ROCKER_SHAFT, BRACKET, TIMING_SET, DISTRIBUTOR, OWN -> List.of();
      case FLYWHEEL -> List.of(CLUTCH_DUST, HEAVY);
      case HEAD, EXHAUST, INTAKE -> List.of(OLD_GASKETS, HEAVY);
      case CARBURETOR, FUEL_PUMP, VALVE_COVER, LIFTER_COVER, WATER_PUMP, FRONT_COVER ->
          List.of(OLD_GASKETS);
      case PAN, OIL_PUMP, REAR_SEAL -> List.of(OLD_GASKETS, USED_OIL);
    };
  }

  private static List<Caution> at(String step) {
    return Arrays.stream(values()).filter(caution -> caution.stages.contains(step)).toList();
  }

  /** The cautions of washing. */
  public static List<Caution> atWashing() {
    return at(WASH);
  }

  /** The cautions of draining the oil and looking for debris in it. */
  public static List<Caution> atOil() {
    return at(OIL);
  }

  /** The cautions of washing, cracking and pressing the bare castings. */
  public static List<Caution> atCastings() {
    return at(CASTINGS);
  }

  /** The cautions of gauges on an engine that is still together. */
  public static List<Caution> beforeTeardown() {
    return at(TOGETHER);
  }

  /** The cautions of an engine that runs in. */
  public static List<Caution> atRunIn() {
    return at(RUN_IN);
  }

  /** The cautions of the first start. */
  public static List<Caution> atFirstStart() {
    return at(START);
  }
}
