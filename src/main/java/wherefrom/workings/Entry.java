package wherefrom.workings;

import wherefrom.quantity.Measured;

/** What was entered for one input. */
public sealed interface Entry {
  /** A figure. */
  record Figure(Measured measured) implements Entry {}

  /** A word. */
  record Choice(String word) implements Entry {}
}
