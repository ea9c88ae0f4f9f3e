package wherefrom.drawing;

/** What stands below the pan rail of an engine seen from below. */
public enum BelowPanRail {
  /** Nothing: small drawings, and where the mains are not asked for. */
  NONE(0),
  /** The names of the mains. */
  NAMES(42),
  /** A row for their keys. */
  KEYS(2 * Glass.GAP);

  private final double height;

  BelowPanRail(double height) {
    this.height = height;
  }

  /** How high it is, in the drawing's unit; names grow with the person's text. */
  double height(Glass glass) {
    return switch (this) {
      case NONE -> 0;
      case NAMES -> glass.px(height) * glass.factor();
      case KEYS -> glass.px(height) + glass.key();
    };
  }
}
