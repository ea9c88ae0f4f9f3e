package wherefrom.rules.debris;

import java.util.List;

/**
 * What a look of debris may come from, and what must be opened to see it (common practice, no
 * source). A look opens what shows each of its suspects, so that none is named and then passed by.
 */
enum Suspect {
  CAM_GEAR_TEETH("teeth of the cam gear", Opening.FRONT_COVER),
  CAM_GEAR_CORE("the core of the cam gear", Opening.FRONT_COVER),
  CHAIN("the chain", Opening.FRONT_COVER),
  LOBE("a lobe", Opening.CAM),
  LIFTER("a lifter", Opening.LIFTERS),
  ROLLER_NEEDLES("the needles of a roller", Opening.LIFTERS),
  PUMP("the pump", Opening.PUMP),
  PISTON_SKIRT("a scuffed piston skirt", Opening.BORES),
  OVERLAY("the overlay of the bearings: tin or lead", Opening.FIRST_BEARINGS, Opening.ALL_BEARINGS),
  ALUMINIUM_SHELL("a bearing lined with aluminum", Opening.FIRST_BEARINGS),
  SHELL_LINING(
      "the lining of a shell or bushing: a bearing is worn through",
      Opening.FIRST_BEARINGS,
      Opening.ALL_BEARINGS),
  MACHINING("earlier machining that was not washed out", Opening.GALLERIES),
  NORMAL_WEAR("normal wear: a little of it is normal", Opening.NOTE),
  SEALANT_STRINGS("strings of sealant that starve the pickup", Opening.PAN_AND_PICKUP),
  WATER(
      "coolant or water in the oil, which harms bearings",
      Opening.DRAINED_OIL,
      Opening.FIRST_BEARINGS),
  HEAD_GASKET("the head gasket", Opening.HEAD_GASKET),
  INTAKE_GASKET("the intake gasket", Opening.INTAKE_GASKET),
  TIMING_COVER("the timing cover's gasket", Opening.FRONT_COVER),
  CRACK("a crack in head or block", Opening.PRESSURE_TEST),
  CONDENSATION("or only condensation from short trips", Opening.DRAINED_OIL);

  private final String words;

  @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
  private final List<Opening> openings;

  Suspect(String words, Opening... openings) {
    this.words = words;
    this.openings = List.of(openings);
  }

  String words() {
    return words;
  }

  List<Opening> openings() {
    return openings;
  }
}
