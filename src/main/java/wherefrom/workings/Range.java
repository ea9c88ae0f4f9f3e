package wherefrom.workings;

import java.math.BigDecimal;
import wherefrom.quantity.Dimension;

/**
 * The values an input may have, in base units of its dimension. The outer ends are far beyond any
 * engine's: they catch slips of the finger, and bound the search when solving backwards.
 *
 * @param least the lower end
 * @param leastItself whether the lower end itself is allowed
 * @param most the upper end, itself allowed
 */
public record Range(BigDecimal least, boolean leastItself, BigDecimal most) {

  /** More than zero. */
  public static Range positive(Dimension dimension) {
    return new Range(BigDecimal.ZERO, false, most(dimension));
  }

  /** Zero or more. */
  public static Range notNegative(Dimension dimension) {
    return new Range(BigDecimal.ZERO, true, most(dimension));
  }

  /** Negative as well as positive. */
  public static Range signed(Dimension dimension) {
    return new Range(most(dimension).negate(), true, most(dimension));
  }

  /** From one end to the other, both allowed, in base units. */
  public static Range between(String least, String most) {
    return new Range(new BigDecimal(least), true, new BigDecimal(most));
  }

  /** More than the lower end, up to the upper, in base units. */
  public static Range above(String least, String most) {
    return new Range(new BigDecimal(least), false, new BigDecimal(most));
  }

  public boolean isTooSmall(BigDecimal base) {
    int order = base.compareTo(least);
    return leastItself ? order < 0 : order <= 0;
  }

  public boolean isTooLarge(BigDecimal base) {
    return base.compareTo(most) > 0;
  }

  public boolean holds(BigDecimal base) {
    return !isTooSmall(base) && !isTooLarge(base);
  }

  private static BigDecimal most(Dimension dimension) {
    return switch (dimension) {
      case NUMBER -> BigDecimal.valueOf(1_000_000);
      case COUNT -> BigDecimal.valueOf(64);
      case LENGTH -> BigDecimal.valueOf(2_000);
      case AREA -> BigDecimal.valueOf(1_000_000);
      case VOLUME -> BigDecimal.valueOf(100_000_000);
      case ANGLE -> BigDecimal.valueOf(720);
      case FORCE -> BigDecimal.valueOf(10_000_000);
      case MASS -> BigDecimal.valueOf(1_000_000);
      case TORQUE -> BigDecimal.valueOf(100_000_000);
      case SPRING_RATE -> BigDecimal.valueOf(100_000);
      case STRESS -> BigDecimal.valueOf(1_000_000);
      case SPEED, RUNNING_TIME -> BigDecimal.valueOf(100_000);
      case TEMPERATURE -> BigDecimal.valueOf(2_000);
      case DISTANCE -> BigDecimal.valueOf(10_000_000);
    };
  }
}
