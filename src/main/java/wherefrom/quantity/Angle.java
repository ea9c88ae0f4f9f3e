package wherefrom.quantity;

import java.math.BigDecimal;

/**
 * An angle in whole thousandths of an arc second (3,600,000 to the degree), so that 0.001° and one
 * arc minute are both exact.
 */
public record Angle(long milliarcseconds) implements Comparable<Angle> {
  public static final long PER_DEGREE = 3_600_000L;

  /** Rounds to the nearest thousandth of an arc second, halves away from zero. */
  public static Angle ofDegrees(BigDecimal degrees) {
    return new Angle(Whole.rounded(degrees, PER_DEGREE));
  }

  public double degrees() {
    return (double) milliarcseconds / PER_DEGREE;
  }

  public double radians() {
    return Math.toRadians(degrees());
  }

  public Angle plus(Angle other) {
    return new Angle(Math.addExact(milliarcseconds, other.milliarcseconds));
  }

  public Angle minus(Angle other) {
    return new Angle(Math.subtractExact(milliarcseconds, other.milliarcseconds));
  }

  @Override
  public int compareTo(Angle other) {
    return Long.compare(milliarcseconds, other.milliarcseconds);
  }
}
