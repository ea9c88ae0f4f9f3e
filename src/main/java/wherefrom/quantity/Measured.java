package wherefrom.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/** A value with the standard uncertainty stated for it, if one was (JCGM 100:2008, 2.3.1). */
public record Measured(Amount value, Optional<Amount> standardUncertainty) {
  /**
   * @throws IllegalArgumentException where value and uncertainty measure different things, or the
   *     uncertainty is negative
   */
  public Measured {
    standardUncertainty.ifPresent(u -> check(value, u));
  }

  /** A value with no uncertainty stated. */
  public static Measured of(Amount value) {
    return new Measured(value, Optional.empty());
  }

  public static Measured of(Amount value, Amount standardUncertainty) {
    return new Measured(value, Optional.of(standardUncertainty));
  }

  /**
   * A value that is off by at most so much either way, each error equally likely: the standard
   * uncertainty is the half-width over √3 (JCGM 100:2008, 4.3.7).
   */
  public static Measured ofLimits(Amount value, Amount halfWidth) {
    BigDecimal root = BigDecimal.valueOf(3).sqrt(MathContext.DECIMAL64);
    BigDecimal u = halfWidth.number().divide(root, MathContext.DECIMAL64);
    return of(value, new Amount(u, halfWidth.unit()));
  }

  private static void check(Amount value, Amount uncertainty) {
    if (uncertainty.dimension() != value.dimension() || uncertainty.number().signum() < 0) {
      throw new IllegalArgumentException(
          uncertainty.text() + " cannot be the uncertainty of " + value.text());
    }
  }
}
