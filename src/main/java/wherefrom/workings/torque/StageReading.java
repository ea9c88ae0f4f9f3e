package wherefrom.workings.torque;

import wherefrom.quantity.Amount;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;
import wherefrom.quantity.Dimension;

/** The outcome of reading a typed stage: {@code 30 N·m}, {@code 65 lb·ft}, {@code 90 deg}. */
public sealed interface StageReading {
  /** The text is a torque or an angle. */
  record Understood(Stage stage) implements StageReading {}

  /** The text is neither; the sentence says what to type instead. */
  record NotUnderstood(String sentence) implements StageReading {}

  /** Reads a stage; a figure must name its unit. */
  static StageReading of(String text) {
    AmountReading reading = AmountText.read(text);
    if (reading instanceof AmountReading.NotUnderstood not) {
      return new NotUnderstood(not.sentence());
    }
    return of(((AmountReading.Understood) reading).amount());
  }

  /** The stage of an amount. */
  static StageReading of(Amount amount) {
    if (amount.dimension() == Dimension.TORQUE) {
      return new Understood(new Stage.ToTorque(amount));
    }
    return amount.dimension() == Dimension.ANGLE
        ? new Understood(new Stage.ByAngle(amount))
        : new NotUnderstood(
            "\""
                + amount.text()
                + "\" is not a stage. Give a torque in N·m or lb·ft, or an angle in deg.");
  }
}
