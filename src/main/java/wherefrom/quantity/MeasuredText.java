package wherefrom.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads {@code 3.870in±0.0005in}: a value and its standard uncertainty; {@code +-} stands for ±. An
 * uncertainty without a unit is in the unit of the value. {@code 3.870in±0.0005in max} says that
 * the value is off by at most so much, and is taken as {@link Measured#ofLimits}.
 */
public final class MeasuredText {
  private static final Pattern PLUS_MINUS = Pattern.compile("±|\\+-|\\+/-");
  private static final String LIMIT_WORD = "max";

  private MeasuredText() {}

  /** Reads a value that must name its unit. */
  public static MeasuredReading read(String text) {
    return readWith(text, Optional.empty());
  }

  /** Reads a value that stands in the given unit where it names none. */
  public static MeasuredReading read(String text, Unit usual) {
    return readWith(text, Optional.of(usual));
  }

  /** The value as it was typed, without what stands behind ±. */
  public static String value(String text) {
    return PLUS_MINUS.split(text, -1)[0];
  }

  private static MeasuredReading readWith(String text, Optional<Unit> usual) {
    String[] sides = PLUS_MINUS.split(text, -1);
    if (sides.length > 2) {
      return refuse("\"" + text.strip() + "\" has more than one ±. Give one uncertainty.");
    }
    AmountReading value =
        usual.map(u -> AmountText.read(sides[0], u)).orElseGet(() -> AmountText.read(sides[0]));
    if (value instanceof AmountReading.Understood understood) {
      return sides.length == 1
          ? understood(Measured.of(understood.amount()))
          : withUncertainty(understood.amount(), sides[1]);
    }
    return refuse(((AmountReading.NotUnderstood) value).sentence());
  }

  private static MeasuredReading withUncertainty(Amount value, String text) {
    String typed = text.strip();
    boolean limits = typed.toLowerCase(Locale.ROOT).endsWith(LIMIT_WORD);
    String figure = limits ? typed.substring(0, typed.length() - LIMIT_WORD.length()) : typed;
    AmountReading reading = AmountText.read(figure, value.unit());
    if (!(reading instanceof AmountReading.Understood understood)) {
      return refuse(((AmountReading.NotUnderstood) reading).sentence());
    }
    Amount spread = understood.amount();
    if (spread.dimension() != value.dimension()) {
      return refuse(
          "The uncertainty " + spread.text() + " is not in the kind of unit of " + value.text());
    }
    if (spread.number().signum() < 0) {
      return refuse("An uncertainty cannot be negative. Type it after ± without a sign.");
    }
    return understood(limits ? Measured.ofLimits(value, spread) : Measured.of(value, spread));
  }

  private static MeasuredReading understood(Measured measured) {
    return new MeasuredReading.Understood(measured);
  }

  private static MeasuredReading refuse(String sentence) {
    return new MeasuredReading.NotUnderstood(sentence);
  }
}
