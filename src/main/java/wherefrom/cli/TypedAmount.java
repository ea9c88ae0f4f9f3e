package wherefrom.cli;

import wherefrom.job.FigureParser;
import wherefrom.quantity.Amount;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;

/** Amounts as a call gives them; one that cannot be read is bad input, and the reader says why. */
final class TypedAmount {
  private TypedAmount() {}

  /** One that must name its unit. */
  static Amount read(String text) throws BadInput {
    return understood(AmountText.read(text));
  }

  /** One of any dimension that is in the usual unit where it names none. */
  static Amount read(String text, Unit usual) throws BadInput {
    return understood(AmountText.read(text, usual));
  }

  /** One of this dimension, in the job's own unit where it names none. */
  static Amount read(OpenedJob bench, String text, Dimension dimension) throws BadInput {
    Unit usual = FigureParser.usual(bench.state().units(), dimension);
    return FigureParser.<Reading>read(text, usual, amount -> () -> amount, TypedAmount::refused)
        .get();
  }

  private interface Reading {
    Amount get() throws BadInput;
  }

  private static Reading refused(String sentence) {
    return () -> {
      throw new BadInput(sentence);
    };
  }

  private static Amount understood(AmountReading reading) throws BadInput {
    if (reading instanceof AmountReading.NotUnderstood not) {
      throw new BadInput(not.sentence());
    }
    return ((AmountReading.Understood) reading).amount();
  }
}
