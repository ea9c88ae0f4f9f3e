package wherefrom.workings.torque;

import java.util.Locale;
import wherefrom.quantity.Amount;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;

/**
 * The outcome of reading a typed stage: {@code 30 N·m}, {@code 65 lb·ft}, {@code 90 deg}, {@code
 * loosen 90 deg}.
 */
public sealed interface StageReading {
  String LOOSEN = "loosen";

  /** The text is a torque or an angle. */
  record Understood(Stage stage) implements StageReading {}

  /** The text is neither; the sentence says what to type instead. */
  record NotUnderstood(String sentence) implements StageReading {}

  /** Reads a stage; a figure must name its unit. {@code loosen} alone loosens fully. */
  static StageReading of(String text) {
    String typed = text.strip();
    if (!typed.toLowerCase(Locale.ROOT).startsWith(LOOSEN)) {
      return ofFigure(text);
    }
    String by = typed.substring(LOOSEN.length()).strip();
    return by.isEmpty() ? of(Amount.of("0", Unit.NEWTON_METRE)) : loosening(by);
  }

  private static StageReading loosening(String by) {
    StageReading reading = ofFigure(by);
    return reading instanceof Understood understood
            && understood.stage() instanceof Stage.ByAngle angle
        ? new Understood(new Stage.Loosen(angle.amount().negated()))
        : new NotUnderstood("Say by which angle to loosen, such as loosen 90deg, or loosen alone.");
  }

  private static StageReading ofFigure(String text) {
    AmountReading reading = AmountText.read(text);
    if (reading instanceof AmountReading.NotUnderstood not) {
      return new NotUnderstood(not.sentence());
    }
    return of(((AmountReading.Understood) reading).amount());
  }

  /** The stage of an amount: less than nothing loosens, as does no torque at all. */
  static StageReading of(Amount amount) {
    boolean loosens =
        amount.dimension() == Dimension.TORQUE
            ? amount.number().signum() == 0
            : amount.dimension() == Dimension.ANGLE && amount.number().signum() < 0;
    return loosens ? new Understood(new Stage.Loosen(amount)) : tightening(amount);
  }

  private static StageReading tightening(Amount amount) {
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
