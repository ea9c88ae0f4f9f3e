package wherefrom.drawing;

/**
 * What a drawing is made for: glass or paper.
 *
 * @param unit a 5.9th of a millimetre in the drawing's unit: lines, marks and gaps are given in
 *     such, the pixels of a screen of 217 mm with 1280 of them
 * @param factor what the person set for text, 1 to 2
 * @param letter the least size of a letter, in the drawing's unit
 */
public record Glass(double unit, double factor, double letter) {
  /** Units on a millimetre. */
  public static final double UNITS_PER_MM = 5.9;

  /** The least letter on glass: capitals of 4.6 mm. */
  public static final double SMALL = 36;

  /** The least letter on paper: capitals of 2.6 mm. */
  private static final double PAPER_MM = 2.6;

  /** The least side of what is pressed, 18 mm, and the least gap beside it. */
  static final double FINGER = 107;

  static final double GAP = 24;

  /** A word with its margins in the side of a key. */
  private static final double WORD_IN_KEY = 0.55;

  public Glass {
    if (!(unit > 0) || !(factor >= 1) || !(letter > 0)) {
      throw new IllegalArgumentException(unit + " a unit, text " + factor + ", letter " + letter);
    }
  }

  /**
   * A screen.
   *
   * @param textFactor what the person set for text, 1 to 2
   */
  public static Glass screen(double pixelsPerMm, double textFactor) {
    double unit = pixelsPerMm / UNITS_PER_MM;
    return new Glass(unit, textFactor, SMALL * unit);
  }

  /** Paper, drawn in a unit of which a millimetre has so many. */
  public static Glass paper(double unitsPerMm) {
    return new Glass(unitsPerMm / UNITS_PER_MM, 1, PAPER_MM / Letters.CAPITAL * unitsPerMm);
  }

  /** The same, whose least letter is as large as the person set it. */
  public Glass grown() {
    return new Glass(unit, factor, letter * factor);
  }

  /** A length in the drawing's unit. */
  double px(double units) {
    return units * unit;
  }

  /** The least side of what a finger hits. */
  public double finger() {
    return px(FINGER);
  }

  /** How high a key with one word is: as high as a finger needs, or as large text does. */
  double key() {
    return finger() * Math.max(1, WORD_IN_KEY * factor);
  }

  /** Between two things that a finger hits. */
  public double gap() {
    return px(GAP);
  }
}
