package wherefrom.workings;

import wherefrom.quantity.Dimension;

/** An input that is a figure with a unit. */
public record AmountInput(
    String key, String words, String meaning, Dimension dimension, boolean required, Range range)
    implements InputSpec {

  /** A required input more than zero. The key with spaces for hyphens is its name. */
  public static AmountInput of(String key, Dimension dimension, String meaning) {
    return new AmountInput(
        key, key.replace('-', ' '), meaning, dimension, true, Range.positive(dimension));
  }

  /** A required length more than zero. */
  public static AmountInput length(String key, String meaning) {
    return of(key, Dimension.LENGTH, meaning);
  }

  public AmountInput optional() {
    return new AmountInput(key, words, meaning, dimension, false, range);
  }

  public AmountInput in(Range other) {
    return new AmountInput(key, words, meaning, dimension, required, other);
  }

  public AmountInput signed() {
    return in(Range.signed(dimension));
  }

  public AmountInput orZero() {
    return in(Range.notNegative(dimension));
  }
}
