package wherefrom.workings;

/** The outcome of reading {@code key=value} texts for a working. */
public sealed interface InputsReading {
  /** All texts were understood. */
  record Understood(Inputs inputs) implements InputsReading {}

  /** One was not. */
  record NotUnderstood(Nonsense nonsense) implements InputsReading {}
}
