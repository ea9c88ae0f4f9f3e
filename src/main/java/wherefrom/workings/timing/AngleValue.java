package wherefrom.workings.timing;

import java.util.Locale;

/** An angle in degrees with its standard uncertainty. */
public record AngleValue(double degrees, double standardUncertainty) {

  AngleValue minus(AngleValue other) {
    return new AngleValue(
        degrees - other.degrees, Math.hypot(standardUncertainty, other.standardUncertainty));
  }

  AngleValue times(double factor) {
    return new AngleValue(degrees * factor, Math.abs(factor) * standardUncertainty);
  }

  /** With an independent part of the uncertainty added. */
  AngleValue with(double moreUncertainty) {
    return new AngleValue(degrees, Math.hypot(standardUncertainty, moreUncertainty));
  }

  /** "107.3 deg ± 0.2 deg". */
  public String text() {
    return String.format(Locale.ROOT, "%.1f deg ± %.1f deg", degrees, standardUncertainty);
  }
}
