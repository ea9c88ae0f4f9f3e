package wherefrom.workings.torque;

import java.util.function.Function;
import wherefrom.quantity.Amount;

/** One round over all bolts. */
public sealed interface Stage {

  /** What the function for its kind makes of it. */
  default <R> R match(Function<ToTorque, R> toTorque, Function<ByAngle, R> byAngle) {
    if (this instanceof ToTorque one) {
      return toTorque.apply(one);
    }
    return byAngle.apply((ByAngle) this);
  }

  /** What to do, such as "to 30 lb·ft". */
  String words();

  /** The torque or the angle. */
  Amount amount();

  /** Tighten to a torque. */
  record ToTorque(Amount amount) implements Stage {
    @Override
    public String words() {
      return "to " + amount.text();
    }
  }

  /** Turn on by an angle from where the bolt stands. */
  record ByAngle(Amount amount) implements Stage {
    @Override
    public String words() {
      return "turn on by " + amount.text();
    }
  }
}
