package wherefrom.ui.controls;

import wherefrom.job.settings.Settings;

/**
 * Millimetres on the glass to pixels, and heights of capitals to font sizes.
 *
 * @param pixelsPerMm measured with a card held to the screen, or guessed
 * @param textFactor 1, 1.5 or 2: what the person set; sizes of keys follow the glass alone
 * @param roomFor letters up to this factor leave the glass room for whole sentences; at least 1
 */
public record Scale(double pixelsPerMm, double textFactor, double roomFor) {
  /** CSS takes a pixel for 1/96 inch; the screen's own word on its size is not to be trusted. */
  public static final double GUESSED_PIXELS_PER_MM = 96 / 25.4;

  /** Capital height of the B612 font as a part of its size: 1500 of 2000 units, from its OS/2. */
  public static final double CAPITAL = 0.75;

  /** Smallest side of a key, in mm: gloved fingers need 19 (MIL-STD-1472E 5.4.3.1.3.3). */
  public static final double KEY_MM = 18.3;

  /** Smallest side of a key that is pressed often or matters most, in mm. */
  public static final double PRIMARY_MM = 22.3;

  /** Gap between keys, in mm. */
  public static final double GAP_MM = 4.2;

  /** Gap beside a key that discards a record, in mm. */
  public static final double DANGER_GAP_MM = 13.2;

  /** Nothing is written smaller: capitals of 4.5 mm, 22 minutes of arc at 0.7 m. */
  public static final double SMALL_MM = 4.5;

  /** Working text: capitals of 6.4 mm, 22 minutes of arc at 1 m. */
  public static final double WORKING_MM = 6.4;

  /** Verdicts and names of places: capitals of 20 mm, to be read from the engine at 3 m. */
  public static final double VERDICT_MM = 20;

  /** What a verdict may shrink to where the words are many, in mm. */
  public static final double LEAST_VERDICT_MM = 10;

  /** Glass of this size has room for whole sentences in letters of the usual size. */
  private static final double WIDE_MM = 165;

  private static final double HIGH_MM = 92;

  public Scale {
    if (!(pixelsPerMm > 0) || !(textFactor >= 1) || !(roomFor >= 1)) {
      throw new IllegalArgumentException(
          pixelsPerMm + " px/mm, text " + textFactor + ", room for " + roomFor);
    }
  }

  /** A scale on glass whose size is not known. */
  public Scale(double pixelsPerMm, double textFactor) {
    this(pixelsPerMm, textFactor, 1);
  }

  /** The scale that a person's settings give. */
  public static Scale of(Settings settings) {
    double measured = settings.pixelsPerMm();
    return new Scale(
        measured > 0 ? measured : GUESSED_PIXELS_PER_MM, settings.textPercent() / 100.0);
  }

  /** The same glass with letters of another size. */
  public Scale withText(double factor) {
    return new Scale(pixelsPerMm, factor, roomFor);
  }

  /** The same on glass of this size in pixels. */
  public Scale on(double width, double height) {
    double room = Math.min(width / px(WIDE_MM), height / px(HIGH_MM));
    return new Scale(pixelsPerMm, textFactor, Math.max(1, room));
  }

  /** The same with brief words wherever letters are larger than usual. */
  public Scale brief() {
    return new Scale(pixelsPerMm, textFactor, 1);
  }

  /** Whether the letters are so large for the glass that whole sentences would fill it. */
  public boolean isLarge() {
    return textFactor > roomFor;
  }

  /** Pixels for a length on the glass. */
  public double px(double mm) {
    return mm * pixelsPerMm;
  }

  /** Font size in pixels for a capital height, without the person's text factor. */
  public double fontPx(double capitalMm) {
    return px(capitalMm) / CAPITAL;
  }

  /** The gap between keys, in whole pixels. */
  public double gap() {
    return Math.ceil(px(GAP_MM));
  }
}
