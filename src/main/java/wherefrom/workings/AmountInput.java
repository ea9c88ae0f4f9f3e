package wherefrom.workings;

import wherefrom.quantity.Dimension;

/**
 * An input that is a figure with a unit.
 *
 * @param range what it may be; anything else is refused
 * @param usual what engines usually have; anything else is asked back
 */
public record AmountInput(
    String key,
    String words,
    String meaning,
    Dimension dimension,
    boolean required,
    Range range,
    Range usual)
    implements InputSpec {

  /** Nothing within its range is unusual. */
  public AmountInput(
      String key,
      String words,
      String meaning,
      Dimension dimension,
      boolean required,
      Range range) {
    this(key, words, meaning, dimension, required, range, range);
  }

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
    return new AmountInput(key, words, meaning, dimension, false, range, usual);
  }

  /** With another range, all of it usual until {@link #usually} says what is. */
  public AmountInput in(Range other) {
    return new AmountInput(key, words, meaning, dimension, required, other);
  }

  public AmountInput signed() {
    return in(Range.signed(dimension));
  }

  public AmountInput orZero() {
    return in(Range.notNegative(dimension));
  }

  /** Asks back outside these ends, in base units (common practice, no source). */
  public AmountInput usually(String least, String most) {
    Range narrow = Range.between(least, most);
    return new AmountInput(key, words, meaning, dimension, required, range, narrow);
  }
}
