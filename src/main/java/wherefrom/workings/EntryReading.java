package wherefrom.workings;

/** The outcome of reading the text for one input. */
public sealed interface EntryReading {
  /** The text is an entry. */
  record Understood(Entry entry) implements EntryReading {}

  /** It is not; the sentence says what to type. */
  record NotUnderstood(String sentence) implements EntryReading {}
}
