package wherefrom.quantity;

/**
 * A spring rate in newtons per millimetre. One lb/in does not come out even in N/mm (the inch holds
 * the factor 127), so this is a double; use {@link Amount} to keep a rate as it was entered.
 */
public record SpringRate(double newtonsPerMillimetre) implements Comparable<SpringRate> {
  public static SpringRate of(Amount rate) {
    return new SpringRate(rate.in(Unit.NEWTON_PER_MILLIMETRE));
  }

  public double poundsPerInch() {
    return Amount.of(newtonsPerMillimetre, Unit.NEWTON_PER_MILLIMETRE).in(Unit.POUND_PER_INCH);
  }

  @Override
  public int compareTo(SpringRate other) {
    return Double.compare(newtonsPerMillimetre, other.newtonsPerMillimetre);
  }
}
