package wherefrom.rules.debris;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How debris looks, what it points to and what to open next (common practice, no source, but for
 * the straining of the oil: FAA-H-8083-32, ch. 10). The names stand in logbooks: they never change.
 */
public enum DebrisLook {
  PLASTIC(
      "plastic",
      "hard crumbs of plastic or fiber",
      true,
      List.of(Opening.PAN_AND_PICKUP, Opening.PUMP, Opening.FILTER, Opening.FIRST_BEARINGS),
      Suspect.CAM_GEAR_TEETH),
  ALUMINIUM_WITH_PLASTIC(
      "aluminum, plastic",
      "aluminum together with plastic",
      true,
      List.of(Opening.PAN_AND_PICKUP),
      Suspect.CAM_GEAR_CORE,
      Suspect.PISTON_SKIRT),
  ALUMINIUM(
      "aluminum",
      "aluminum without plastic",
      true,
      List.of(),
      Suspect.PISTON_SKIRT,
      Suspect.PUMP,
      Suspect.ALUMINIUM_SHELL),
  MAGNETIC_FLAKES(
      "steel flakes",
      "magnetic steel: flakes or needles",
      true,
      List.of(),
      Suspect.LOBE,
      Suspect.LIFTER,
      Suspect.CHAIN,
      Suspect.PUMP,
      Suspect.ROLLER_NEEDLES),
  GREY_PASTE("gray paste", "fine gray paste on the magnet", false, List.of(), Suspect.NORMAL_WEAR),
  SILVER_GLITTER(
      "glitter", "silver-gray glitter that no magnet draws", true, List.of(), Suspect.OVERLAY),
  COPPER("copper", "copper or bronze color", true, List.of(), Suspect.SHELL_LINING),
  SWARF("chips, grit", "curled chips, or grit", true, List.of(), Suspect.MACHINING),
  BROWN_MILK(
      "brown milk",
      "brown milk",
      true,
      List.of(),
      Suspect.WATER,
      Suspect.HEAD_GASKET,
      Suspect.INTAKE_GASKET,
      Suspect.TIMING_COVER,
      Suspect.CRACK,
      Suspect.CONDENSATION),
  SEALANT("sealant", "square-edged rubber or sealant", false, List.of(), Suspect.SEALANT_STRINGS);

  private final String brief;
  private final String words;
  private final boolean harmful;

  /** Where more of it lies, whatever it came from. */
  @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
  private final List<Opening> besides;

  @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
  private final List<Suspect> suspects;

  DebrisLook(
      String brief, String words, boolean harmful, List<Opening> besides, Suspect... suspects) {
    this.brief = brief;
    this.words = words;
    this.harmful = harmful;
    this.besides = List.copyOf(besides);
    this.suspects = List.of(suspects);
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
    return suspects.stream().map(Suspect::words).collect(Collectors.joining(", "));
  }

  /** Whether it harms bearings if it reaches them. */
  public boolean isHarmful() {
    return harmful;
  }

  /** What to open next: what shows each suspect, and where more of it lies. */
  public List<Opening> openings() {
    Set<Opening> openings = new LinkedHashSet<>();
    suspects.forEach(suspect -> openings.addAll(suspect.openings()));
    openings.addAll(besides);
    return Stream.of(Opening.values()).filter(openings::contains).toList();
  }
}
