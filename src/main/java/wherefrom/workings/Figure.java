package wherefrom.workings;

import wherefrom.quantity.Unit;
import wherefrom.workings.maths.DualNumber;

/** One outcome of a formula: its value in base units with its derivatives, and how to show it. */
public record Figure(String key, String words, Unit unit, DualNumber inBase, Rounding rounding) {
  public Figure(String key, String words, Unit unit, DualNumber inBase) {
    this(key, words, unit, inBase, Rounding.NEAREST);
  }
}
