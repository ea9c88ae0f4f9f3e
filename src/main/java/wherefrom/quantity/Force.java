package wherefrom.quantity;

import java.math.BigDecimal;

/**
 * A force in newtons, exact: a pound-force is 4.4482216152605 N, which is 0.45359237 kg times
 * 9.80665 m/s².
 */
public record Force(BigDecimal newtons) implements Comparable<Force> {
  public Force {
    newtons = newtons.stripTrailingZeros();
  }

  public static Force ofNewtons(BigDecimal newtons) {
    return new Force(newtons);
  }

  public static Force ofPounds(BigDecimal pounds) {
    return new Force(new Amount(pounds, Unit.POUND).inBase());
  }

  public double pounds() {
    return amount().in(Unit.POUND);
  }

  public Amount amount() {
    return new Amount(newtons, Unit.NEWTON);
  }

  @Override
  public int compareTo(Force other) {
    return newtons.compareTo(other.newtons);
  }
}
