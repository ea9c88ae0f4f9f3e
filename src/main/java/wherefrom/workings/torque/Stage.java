package wherefrom.workings.torque;

import java.util.function.Function;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;

/** One round over all bolts. */
public sealed interface Stage {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<ToTorque, R> toTorque, Function<ByAngle, R> byAngle, Function<Loosen, R> loosen) {
    if (this instanceof ToTorque one) {
      return toTorque.apply(one);
    }
    if (this instanceof ByAngle one) {
      return byAngle.apply(one);
    }
    return loosen.apply((Loosen) this);
  }

  /** What to do, such as "to 30 lb·ft". */
  String words();

  /** What to do with one bolt, such as "bolt 5 to 30 lb·ft" or "turn bolt 4 on by 90 deg". */
  String words(Bolt bolt);

  /** The torque or the angle; less than nothing, or no torque at all, where it loosens. */
  Amount amount();

  /**
   * Tighten to a torque.
   *
   * @param again whether the stage before is to the same torque
   */
  record ToTorque(Amount amount, boolean again) implements Stage {
    public ToTorque(Amount amount) {
      this(amount, false);
    }

    @Override
    public String words() {
      return "to " + amount.text() + (again ? " again" : "");
    }

    @Override
    public String words(Bolt bolt) {
      return "bolt " + bolt.number() + " " + words();
    }
  }

  /** Turn on by an angle from where the bolt stands. */
  record ByAngle(Amount amount) implements Stage {
    @Override
    public String words() {
      return "turn on by " + amount.text();
    }

    @Override
    public String words(Bolt bolt) {
      return "turn bolt " + bolt.number() + " on by " + amount.text();
    }
  }

  /**
   * Loosen by an angle, which is less than nothing, or fully, where the amount is a torque of 0.
   * Never with the torque wrench (NAVEDTRA 14113).
   */
  record Loosen(Amount amount) implements Stage {
    @Override
    public String words() {
      return "loosen " + howFar() + ", no torque wrench";
    }

    @Override
    public String words(Bolt bolt) {
      return "loosen bolt " + bolt.number() + " " + howFar() + ", no torque wrench";
    }

    private String howFar() {
      return amount.dimension() == Dimension.TORQUE ? "fully" : "by " + amount.negated().text();
    }
  }
}
