package wherefrom.quantity;

import java.math.BigDecimal;

/** A torque in newton metres, exact: one lb·ft is 1.3558179483314004 N·m. */
public record Torque(BigDecimal newtonMetres) implements Comparable<Torque> {
  public Torque {
    newtonMetres = newtonMetres.stripTrailingZeros();
  }

  public static Torque ofNewtonMetres(BigDecimal newtonMetres) {
    return new Torque(newtonMetres);
  }

  public static Torque ofPoundFeet(BigDecimal poundFeet) {
    return new Torque(new Amount(poundFeet, Unit.POUND_FOOT).inBase().movePointLeft(3));
  }

  public double poundFeet() {
    return amount().in(Unit.POUND_FOOT);
  }

  public Amount amount() {
    return new Amount(newtonMetres, Unit.NEWTON_METRE);
  }

  @Override
  public int compareTo(Torque other) {
    return newtonMetres.compareTo(other.newtonMetres);
  }
}
