package wherefrom.drawing;

/** The mark of a state: an outline of its own, for the exceptions a letter too. */
public enum Sign {
  IN("I"),
  OUT("O"),
  WASHING("W"),
  AT_SHOP("S"),
  MISSING("?"),
  FITTED(""),
  /** Another part than the place's own is fitted. */
  OTHER(""),
  /** Not cleared, or something stands against the part that sits there. */
  AGAINST(""),
  /** A look or a reading makes it suspect. */
  SUSPECT(""),
  /** It failed. */
  FAILED(""),
  /** No decision yet. */
  OPEN(""),
  /** Still to do, where a drawing is an index: a ring that waits for its tick. */
  WAITING(""),
  /** Left empty on purpose. */
  EMPTY("E"),
  /** New instead of the old one. */
  NEW("NEW");

  private final String letter;

  Sign(String letter) {
    this.letter = letter;
  }

  /** What stands in it; empty where the outline says it alone. */
  public String letter() {
    return letter;
  }

  /**
   * Whether it is drawn on the small drawings too, where in, out and fitted are said by outline.
   */
  boolean isException() {
    return this != IN && this != OUT && this != FITTED && this != WAITING;
  }
}
