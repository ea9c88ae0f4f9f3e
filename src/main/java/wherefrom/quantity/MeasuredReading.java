package wherefrom.quantity;

/** The outcome of reading a typed figure with its uncertainty. */
public sealed interface MeasuredReading {
  /** The text is a figure, with or without an uncertainty. */
  record Understood(Measured measured) implements MeasuredReading {}

  /** The text is not; the sentence says what is wrong and what to type instead. */
  record NotUnderstood(String sentence) implements MeasuredReading {}
}
