package wherefrom.quantity;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** An amount of money in whole cents; the currency is the engine job's one currency. */
public record Money(long cents) implements Comparable<Money> {
  public static final Money ZERO = new Money(0);
  private static final Pattern TYPED = Pattern.compile("\\d{1,12}(?:[.,]\\d{1,2})?");

  public static Money ofCents(long cents) {
    return new Money(cents);
  }

  /**
   * Reads {@code 12}, {@code 12.5} or {@code 12,50}; empty for anything else, a sign or a thousands
   * mark among it.
   */
  public static Optional<Money> find(String text) {
    String typed = text.strip();
    if (!TYPED.matcher(typed).matches()) {
      return Optional.empty();
    }
    BigDecimal whole = new BigDecimal(typed.replace(',', '.')).movePointRight(2);
    return Optional.of(new Money(whole.longValueExact()));
  }

  public Money plus(Money other) {
    return new Money(Math.addExact(cents, other.cents));
  }

  public Money minus(Money other) {
    return new Money(Math.subtractExact(cents, other.cents));
  }

  /** "12.50": two decimals, a decimal point, no thousands mark. */
  public String text() {
    return BigDecimal.valueOf(cents, 2).toPlainString();
  }

  @Override
  public int compareTo(Money other) {
    return Long.compare(cents, other.cents);
  }
}
