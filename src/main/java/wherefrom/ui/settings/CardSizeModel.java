package wherefrom.ui.settings;

/**
 * The card on the screen against the card in the hand. ISO/IEC 7810, size ID-1: 85.60 mm by 53.98
 * mm, the size of bank cards.
 */
final class CardSizeModel {
  static final double WIDE_MM = 85.60;
  static final double HIGH_MM = 53.98;

  private static final double LEAST_PX = 150;
  private static final double MOST_PX = 1600;

  private double widePx;

  CardSizeModel(double pixelsPerMm) {
    widePx = Math.round(pixelsPerMm * WIDE_MM);
  }

  /** Moves the right edge by whole pixels. */
  void step(int px) {
    widePx = Math.max(LEAST_PX, Math.min(MOST_PX, widePx + px));
  }

  double widePx() {
    return widePx;
  }

  double highPx() {
    return widePx * HIGH_MM / WIDE_MM;
  }

  double pixelsPerMm() {
    return widePx / WIDE_MM;
  }
}
