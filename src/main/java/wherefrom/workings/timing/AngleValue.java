package wherefrom.workings.timing;

import java.util.Locale;
import wherefrom.workings.maths.WheelAngle;

/** An angle in degrees with its standard uncertainty. */
public record AngleValue(double degrees, double standardUncertainty) {
  private static final double SHOWN_STEP = 0.1;

  AngleValue minus(AngleValue other) {
    return new AngleValue(
        degrees - other.degrees, Math.hypot(standardUncertainty, other.standardUncertainty));
  }

  /** The way from another mark of the wheel to this one, the shorter way round. */
  AngleValue from(AngleValue other) {
    AngleValue plain = minus(other);
    return new AngleValue(WheelAngle.near(plain.degrees, 0), plain.standardUncertainty);
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
    return String.format(Locale.ROOT, "%.1f deg", degrees) + band();
  }

  /** " ± 0.2 deg"; an uncertainty that is too small for the one place shows as a step of it. */
  String band() {
    double shown = standardUncertainty > 0 ? Math.max(SHOWN_STEP, standardUncertainty) : 0;
    return String.format(Locale.ROOT, " ± %.1f deg", shown);
  }
}
