package wherefrom.parts;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * The kinds of part that are tracked. They stand in the order in which they come out: the stage
 * groups what is taken off together, place by place.
 */
public enum PartKind {
  ROCKER("rocker", "rockers", Home.VALVE, 1, Orientation.FACING),
  PIVOT("pivot", "pivots", Home.VALVE, 1, Orientation.NONE),
  PUSHROD("pushrod", "pushrods", Home.VALVE, 1, Orientation.TOP_END),
  LIFTER("lifter", "lifters", Home.VALVE, 2, Orientation.NONE),
  KEEPERS("keeper pair", "keeper pairs", Home.VALVE, 3, Orientation.NONE),
  RETAINER("retainer", "retainers", Home.VALVE, 3, Orientation.NONE),
  SPRING("valve spring", "valve springs", Home.VALVE, 3, Orientation.TOP_END),
  VALVE("valve", "valves", Home.VALVE, 3, Orientation.NONE),
  ROD_CAP("rod cap", "rod caps", Home.ROD, 4, Orientation.FACING),
  ROD_SHELL("rod shell", "rod shells", Home.ROD, 4, Orientation.HALF),
  ROD("rod", "rods", Home.ROD, 4, Orientation.FACING),
  PISTON("piston", "pistons", Home.BORE, 4, Orientation.FACING),
  MAIN_CAP("main cap", "main caps", Home.MAIN, 5, Orientation.FACING),
  MAIN_SHELL("main shell", "main shells", Home.MAIN, 5, Orientation.HALF),
  CAM_BEARING("cam bearing", "cam bearings", Home.CAM_BEARING, 6, Orientation.FACING);

  private static final Set<PartKind> ALWAYS_ON =
      EnumSet.of(PUSHROD, ROCKER, LIFTER, ROD_SHELL, MAIN_SHELL);

  private static final Set<PartKind> RECOMMENDED =
      EnumSet.of(PIVOT, VALVE, ROD_CAP, ROD, PISTON, MAIN_CAP);

  private final String key;
  private final String word;
  private final String plural;
  private final Home home;
  private final int stage;
  private final Orientation orientation;

  PartKind(String word, String plural, Home home, int stage, Orientation orientation) {
    this.key = name().toLowerCase(Locale.ROOT).replace('_', '-');
    this.word = word;
    this.plural = plural;
    this.home = home;
    this.stage = stage;
    this.orientation = orientation;
  }

  /** Pushrods, rockers, lifters and bearing shells: what every job tracks. */
  public static Set<PartKind> alwaysOn() {
    return EnumSet.copyOf(ALWAYS_ON);
  }

  /**
   * Besides {@link #alwaysOn()}, what must go back where it came from where it is used again: caps
   * and rods are machined together, pistons, valves and pivots have worn in (sources in the rules).
   */
  public static Set<PartKind> recommended() {
    return EnumSet.copyOf(RECOMMENDED);
  }

  public static Set<PartKind> all() {
    return EnumSet.allOf(PartKind.class);
  }

  /** The kind with this {@link #key()}. */
  public static Optional<PartKind> find(String key) {
    return Arrays.stream(values()).filter(kind -> kind.key().equals(key)).findFirst();
  }

  public String word() {
    return word;
  }

  public String plural() {
    return plural;
  }

  public Home home() {
    return home;
  }

  /** When it comes out, 1 first. */
  public int stage() {
    return stage;
  }

  public Orientation orientation() {
    return orientation;
  }

  /** The name in files and on the command line, such as {@code rod-shell}. Never changes. */
  public String key() {
    return key;
  }
}
