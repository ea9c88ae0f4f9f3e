package wherefrom.drawing;

/**
 * What is so at a place.
 *
 * @param look how the part is drawn: in, out or fitted
 * @param sign its mark
 * @param words said aloud
 */
public record PartState(Look look, Sign sign, String words) {
  public static final PartState IN = new PartState(Look.IN, Sign.IN, "in the engine");
  public static final PartState OUT = new PartState(Look.OUT, Sign.OUT, "out");
  public static final PartState WASHING = new PartState(Look.OUT, Sign.WASHING, "washing");
  public static final PartState AT_SHOP =
      new PartState(Look.OUT, Sign.AT_SHOP, "at the machine shop");
  public static final PartState MISSING = new PartState(Look.OUT, Sign.MISSING, "lost");
  public static final PartState FITTED = new PartState(Look.FITTED, Sign.FITTED, "fitted");
  public static final PartState OTHER_FITTED =
      new PartState(Look.FITTED, Sign.OTHER, "another part is fitted");
  public static final PartState NOT_CLEARED = new PartState(Look.OUT, Sign.AGAINST, "not cleared");
  public static final PartState FITTED_BUT =
      new PartState(Look.FITTED, Sign.AGAINST, "fitted, not cleared");
  public static final PartState IN_BUT =
      new PartState(Look.IN, Sign.AGAINST, "in the engine, not cleared");
  public static final PartState LEFT_EMPTY = new PartState(Look.OUT, Sign.EMPTY, "left empty");
  public static final PartState NEW_FITTED =
      new PartState(Look.FITTED, Sign.NEW, "a new part is fitted");

  public PartState {
    if (look != Look.IN && look != Look.OUT && look != Look.FITTED) {
      throw new IllegalArgumentException("no state of a part: " + look);
    }
  }

  /** The same part, found suspect. */
  public PartState suspect() {
    return new PartState(look, Sign.SUSPECT, words + ", suspect");
  }

  /** The same part, found to have failed. */
  public PartState failed() {
    return new PartState(look, Sign.FAILED, words + ", failed");
  }

  /** The same part, with no decision on it yet. */
  public PartState open() {
    return new PartState(look, Sign.OPEN, words + ", not decided");
  }
}
