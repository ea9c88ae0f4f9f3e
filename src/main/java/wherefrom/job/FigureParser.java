package wherefrom.job;

import java.util.Optional;
import java.util.function.Function;
import wherefrom.quantity.Amount;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitChoice;
import wherefrom.quantity.UnitSystem;

/** Figures as they are typed at the bench: what carries no unit is in the job's. */
public final class FigureParser {
  private FigureParser() {}

  /** The unit in which the job is shown. */
  public static Unit usual(UnitSystem system, Dimension dimension) {
    return UnitChoice.of(dimension).usual(system);
  }

  /** The figure; empty where it cannot be read, or is of another dimension. */
  public static Optional<Amount> find(String text, Unit usual) {
    return read(text, usual, Optional::of, sentence -> Optional.empty());
  }

  /** Reads a figure; the sentence of a figure that cannot be read goes to the second function. */
  public static <T> T read(
      String text,
      UnitSystem system,
      Dimension dimension,
      Function<Amount, T> understood,
      Function<String, T> refused) {
    return read(text, usual(system, dimension), understood, refused);
  }

  /**
   * Reads a figure that is in the usual unit where it names none; of another dimension it is
   * refused.
   */
  public static <T> T read(
      String text, Unit usual, Function<Amount, T> understood, Function<String, T> refused) {
    AmountReading reading = AmountText.read(text, usual);
    if (reading instanceof AmountReading.NotUnderstood not) {
      return refused.apply(not.sentence());
    }
    Amount amount = ((AmountReading.Understood) reading).amount();
    Dimension dimension = usual.dimension();
    return amount.dimension() == dimension
        ? understood.apply(amount)
        : refused.apply(
            "\"" + text.strip() + "\" is not " + dimension.words() + ": check the unit.");
  }
}
