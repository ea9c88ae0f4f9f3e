package wherefrom.rules.size;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;

/** How a step from the standard size is said. */
final class SizeStepWords {
  /** Thousandths of an inch, as they are spoken (common practice, no source). */
  private static final Map<Integer, String> SPOKEN =
      Map.of(10, "ten", 20, "twenty", 30, "thirty", 40, "forty", 60, "sixty");

  private SizeStepWords() {}

  static String of(Amount step, boolean under) {
    if (step.number().signum() == 0) {
      return "standard";
    }
    int places = step.unit() == Unit.INCH ? 3 : 2;
    BigDecimal plain = step.number().stripTrailingZeros();
    BigDecimal shown = plain.scale() < places ? plain.setScale(places) : plain;
    return new Amount(shown, step.unit()).text() + " " + side(under);
  }

  static String said(Amount step, boolean under) {
    return of(step, under)
        + findSpoken(step).map(number -> " (" + number + " " + side(under) + ")").orElse("");
  }

  /** The thousandths that a spoken step stands for. */
  static Optional<Integer> findThousandths(String spoken) {
    return SPOKEN.entrySet().stream()
        .filter(one -> one.getValue().equals(spoken))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  private static Optional<String> findSpoken(Amount step) {
    BigDecimal thousandths = step.number().movePointRight(3).stripTrailingZeros();
    return step.unit() == Unit.INCH && thousandths.scale() <= 0
        ? Optional.ofNullable(SPOKEN.get(thousandths.intValue()))
        : Optional.empty();
  }

  private static String side(boolean under) {
    return under ? "under" : "over";
  }
}
