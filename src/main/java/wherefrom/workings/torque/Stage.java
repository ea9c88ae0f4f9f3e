package wherefrom.workings.torque;

import wherefrom.quantity.Amount;

/** One round over all bolts. */
public sealed interface Stage {
  /** What to do, such as "to 30 lb·ft". */
  String words();

  /** Tighten to a torque. */
  record ToTorque(Amount torque) implements Stage {
    @Override
    public String words() {
      return "to " + torque.text();
    }
  }

  /** Turn on by an angle from where the bolt stands. */
  record ByAngle(Amount angle) implements Stage {
    @Override
    public String words() {
      return "turn on by " + angle.text();
    }
  }
}
