package wherefrom.ui.audit;

import javafx.scene.paint.Color;

/** Contrast ratio of two colours as WCAG 2.2 defines it, 1 to 21. */
final class Contrast {
  private Contrast() {}

  static double of(Color one, Color other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  /** Relative luminance, WCAG 2.2. */
  private static double luminance(Color colour) {
    return 0.2126 * linear(colour.getRed())
        + 0.7152 * linear(colour.getGreen())
        + 0.0722 * linear(colour.getBlue());
  }

  private static double linear(double value) {
    return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }
}
