package wherefrom.drawing;

/**
 * What is so at a place.
 *
 * @param look how the part is drawn: in, out or fitted
 * @param sign its mark
 * @param words said aloud
 */
public record PartState(DrawnAs look, Sign sign, String words) {
  public static final PartState IN = new PartState(DrawnAs.IN, Sign.IN, "in the engine");
  public static final PartState OUT = new PartState(DrawnAs.OUT, Sign.OUT, "out");
  public static final PartState WASHING = new PartState(DrawnAs.OUT, Sign.WASHING, "washing");
  public static final PartState AT_SHOP =
      new PartState(DrawnAs.OUT, Sign.AT_SHOP, "at the machine shop");
  public static final PartState MISSING = new PartState(DrawnAs.OUT, Sign.MISSING, "lost");
  public static final PartState FITTED = new PartState(DrawnAs.FITTED, Sign.FITTED, "fitted");
  public static final PartState OTHER_FITTED =
      new PartState(DrawnAs.FITTED, Sign.OTHER, "another part is fitted");
  public static final PartState NOT_CLEARED =
      new PartState(DrawnAs.OUT, Sign.AGAINST, "not cleared");
  public static final PartState FITTED_BUT =
      new PartState(DrawnAs.FITTED, Sign.AGAINST, "fitted, not cleared");
  public static final PartState IN_BUT =
      new PartState(DrawnAs.IN, Sign.AGAINST, "in the engine, not cleared");
  public static final PartState LEFT_EMPTY = new PartState(DrawnAs.OUT, Sign.EMPTY, "left empty");
  public static final PartState NEW_FITTED =
      new PartState(DrawnAs.FITTED, Sign.NEW, "a new part is fitted");

  public PartState {
    if (look != DrawnAs.IN && look != DrawnAs.OUT && look != DrawnAs.FITTED) {
      throw new IllegalArgumentException("no state of a part: " + look);
    }
  }

  /** The same with another look: what is said of a part that is out is said of its contour. */
  public PartState drawn(DrawnAs as) {
    return new PartState(as, sign, words);
  }

  /** The same part, found suspect. */
  public PartState suspect() {
    return new PartState(look, Sign.SUSPECT, words + ", suspect");
  }

  /** The same part, found to have failed. */
  public PartState failed() {
    return new PartState(look, Sign.FAILED, words + ", failed");
  }

  /** The same part, which is not to go in again. */
  public PartState toReplace() {
    return new PartState(look, Sign.AGAINST, words + ", to be replaced");
  }

  /** The same part, with no decision on it yet. */
  public PartState open() {
    return new PartState(look, Sign.OPEN, words + ", not decided");
  }
}
