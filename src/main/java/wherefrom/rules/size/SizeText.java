package wherefrom.rules.size;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wherefrom.quantity.Amount;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;

/**
 * Reads a size as it is written on slips and boxes: {@code 0.010 in}, {@code 0.010 in under},
 * {@code ten under}, {@code standard}, or a whole diameter such as {@code 3.9000 in}.
 */
public final class SizeText {
  /** No journal or bore is thinner, and no step is near it: the reading plans' lower bound. */
  private static final BigDecimal LEAST_DIAMETER = BigDecimal.valueOf(20);

  /** Well over the last usual step of 1.5 mm (common practice, no source). */
  private static final BigDecimal MOST_STEP = BigDecimal.valueOf(5);

  private static final Pattern SIDE =
      Pattern.compile("(.*?)\\s*\\b(?:under|over)(?:size)?", Pattern.CASE_INSENSITIVE);

  private SizeText() {}

  /** Empty where it is no size of a journal, a bore or a part that fits one. */
  public static Optional<Amount> read(String text, Unit usual) {
    String typed = text.strip();
    if (isStandard(text)) {
      return Optional.of(Amount.of("0", usual));
    }
    Matcher side = SIDE.matcher(typed);
    String figure = side.matches() ? side.group(1) : typed;
    Optional<Amount> spoken =
        SizeStepWords.findThousandths(figure.toLowerCase(Locale.ROOT))
            .map(number -> new Amount(BigDecimal.valueOf(number, 3), Unit.INCH));
    return spoken.or(() -> figure(figure, usual)).filter(SizeText::isSize);
  }

  /** Whether the standard size is said in words. */
  static boolean isStandard(String text) {
    return text.strip().toLowerCase(Locale.ROOT).matches("standard|std");
  }

  private static Optional<Amount> figure(String text, Unit usual) {
    return AmountText.read(text, usual) instanceof AmountReading.Understood understood
            && understood.amount().dimension() == Dimension.LENGTH
        ? Optional.of(understood.amount())
        : Optional.empty();
  }

  private static boolean isSize(Amount size) {
    return size.number().signum() >= 0 && (isDiameter(size) || isStep(size));
  }

  /** Whether it is a whole diameter, and no step from one. */
  public static boolean isDiameter(Amount size) {
    return size.to(Unit.MILLIMETRE).number().compareTo(LEAST_DIAMETER) >= 0;
  }

  private static boolean isStep(Amount size) {
    return size.to(Unit.MILLIMETRE).number().compareTo(MOST_STEP) <= 0;
  }
}
