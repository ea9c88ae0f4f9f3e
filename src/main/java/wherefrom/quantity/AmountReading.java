package wherefrom.quantity;

/** The outcome of reading a typed figure. */
public sealed interface AmountReading {
  /** The text is a figure with a unit. */
  record Understood(Amount amount) implements AmountReading {}

  /** The text is not; the sentence says what is wrong and what to type instead. */
  record NotUnderstood(String sentence) implements AmountReading {}
}
