package wherefrom.rules.debris;

import java.util.List;

/**
 * How debris looks, what it points to and what to open next (common practice, no source, but for
 * the straining of the oil: FAA-H-8083-32, ch. 10). The names stand in logbooks: they never change.
 */
public enum DebrisLook {
  PLASTIC(
      "plastic",
      "hard crumbs of plastic or fibre",
      "teeth of the cam gear",
      true,
      "FRONT_COVER PAN_AND_PICKUP PUMP FILTER FIRST_BEARINGS"),
  ALUMINIUM_WITH_PLASTIC(
      "aluminium",
      "aluminium together with plastic",
      "the core of the cam gear, or a piston skirt",
      true,
      "FRONT_COVER BORES"),
  MAGNETIC_FLAKES(
      "steel flakes",
      "magnetic steel: flakes or needles",
      "a lobe, lifter, chain, pump, or the needles of a roller",
      true,
      "LIFTERS CAM PUMP"),
  GREY_PASTE(
      "grey paste",
      "fine grey paste on the magnet",
      "normal wear, if there is little",
      false,
      "NOTE"),
  SILVER_GLITTER(
      "glitter",
      "silver-grey glitter that no magnet draws",
      "the overlay of the bearings: tin or lead",
      true,
      "FIRST_BEARINGS ALL_BEARINGS"),
  COPPER(
      "copper",
      "copper or bronze colour",
      "the lining of a shell, or a bush: a bearing is worn through",
      true,
      "FIRST_BEARINGS ALL_BEARINGS"),
  SWARF(
      "swarf, grit",
      "curled swarf, or grit",
      "an earlier machining that was not washed out",
      true,
      "GALLERIES"),
  BROWN_MILK("brown milk", "brown milk", "coolant in the oil", false, "HEAD_GASKET"),
  SEALANT(
      "sealant",
      "square-edged rubber or sealant",
      "strings of sealant that starve the pickup",
      false,
      "PAN_AND_PICKUP");

  private final String brief;
  private final String words;
  private final String suspect;
  private final boolean harmful;
  private final String openings;

  DebrisLook(String brief, String words, String suspect, boolean harmful, String openings) {
    this.brief = brief;
    this.words = words;
    this.suspect = suspect;
    this.harmful = harmful;
    this.openings = openings;
  }

  /** A word or two, for the drawn engine. */
  public String brief() {
    return brief;
  }

  public String words() {
    return words;
  }

  /** What it points to. */
  public String suspect() {
    return suspect;
  }

  /** Whether it harms bearings if it reaches them. */
  public boolean isHarmful() {
    return harmful;
  }

  /** What to open next, in the order in which the rule names it. */
  public List<Opening> openings() {
    return List.of(openings.split(" ")).stream().map(Opening::valueOf).toList();
  }
}
