package wherefrom.referee;

/** The kinds of part, one row a kind. */
enum Kind {
  // key in files, where it lives, may it be turned, which new parts are alike, what it moves with
  ROCKER("rocker", "valve", true, Alike.ALL, ""),
  PIVOT("pivot", "valve", false, Alike.ALL, "rocker"),
  PUSHROD("pushrod", "valve", true, Alike.ALL, ""),
  LIFTER("lifter", "valve", false, Alike.ALL, ""),
  KEEPERS("keepers", "valve", false, Alike.ALL, ""),
  RETAINER("retainer", "valve", false, Alike.ALL, ""),
  SPRING("spring", "valve", true, Alike.ALL, ""),
  VALVE("valve", "valve", false, Alike.SIDE, ""),
  PISTON("piston", "bore", true, Alike.NONE, ""),
  ROD("rod", "rod upper", true, Alike.NONE, ""),
  ROD_CAP("rod-cap", "rod lower", true, Alike.NONE, "rod"),
  ROD_SHELL("rod-shell", "rod", true, Alike.HALF, "rod"),
  MAIN_CAP("main-cap", "main lower", true, Alike.NONE, ""),
  MAIN_SHELL("main-shell", "main", true, Alike.THRUST, "main-cap"),
  CAM_BEARING("cam-bearing", "cam", true, Alike.NONE, "");

  /** Which places of a kind take the same new part. */
  enum Alike {
    NONE,
    ALL,
    /** Intake and exhaust differ. */
    SIDE,
    /** Upper and lower differ. */
    HALF,
    /** Upper and lower differ, and so does the main that takes the thrust. */
    THRUST
  }

  final String key;
  final String home;
  final boolean turns;
  final Alike alike;
  final String movesWith;

  Kind(String key, String home, boolean turns, Alike alike, String movesWith) {
    this.key = key;
    this.home = home;
    this.turns = turns;
    this.alike = alike;
    this.movesWith = movesWith;
  }

  /** Whether a machine shop works it over; the others are only ever replaced. */
  boolean isWorked() {
    return switch (this) {
      case ROCKER, LIFTER, VALVE, PISTON, ROD, ROD_CAP, MAIN_CAP -> true;
      default -> false;
    };
  }

  boolean isShell() {
    return this == ROD_SHELL || this == MAIN_SHELL;
  }

  /** The cap that closes the bearing it goes into; null where none does. */
  Kind closedBy() {
    return switch (this) {
      case ROD_SHELL, ROD, PISTON -> ROD_CAP;
      case MAIN_SHELL -> MAIN_CAP;
      default -> null;
    };
  }

  /** What a shell lies in; null of one in the block, and of all else. */
  Kind heldBy(boolean upper) {
    return switch (this) {
      case ROD_SHELL -> upper ? ROD : ROD_CAP;
      case MAIN_SHELL -> upper ? null : MAIN_CAP;
      default -> null;
    };
  }

  boolean isCap() {
    return this == ROD_CAP || this == MAIN_CAP;
  }
}
