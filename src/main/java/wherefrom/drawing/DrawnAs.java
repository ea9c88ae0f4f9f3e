package wherefrom.drawing;

/** How a part is drawn. */
public enum DrawnAs {
  /** In the engine, never out: solid, white, its fasteners hollow. */
  IN(1),
  /** Out: one dashed contour, nothing inside. */
  OUT(1),
  /** Fitted: solid, its fasteners black. */
  FITTED(1.2),
  /** The one that this is about; never without a ring or an arrow. */
  HERE(1.5),
  /** Not asked about: thin. */
  FAINT(0.6),
  /** Not asked about, and out: not drawn. */
  ABSENT(0);

  private final double weight;

  DrawnAs(double weight) {
    this.weight = weight;
  }

  /** Width of its lines, of that of a part in the engine. */
  public double weight() {
    return weight;
  }

  /** Whether a shape of a part is drawn at all. */
  public boolean shows(Role role) {
    return switch (this) {
      case IN, FITTED, HERE -> true;
      case OUT -> role == Role.BODY;
      case FAINT -> role != Role.BAND;
      case ABSENT -> false;
    };
  }
}
