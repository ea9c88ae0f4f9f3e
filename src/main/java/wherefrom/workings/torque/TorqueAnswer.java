package wherefrom.workings.torque;

import java.util.function.Function;

/** What a tick gives: the card after it, or why it does not count. */
public sealed interface TorqueAnswer {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<Ticked, R> ticked, Function<OutOfTurn, R> outOfTurn, Function<Refused, R> refused) {
    if (this instanceof Ticked one) {
      return ticked.apply(one);
    }
    if (this instanceof OutOfTurn one) {
      return outOfTurn.apply(one);
    }
    return refused.apply((Refused) this);
  }

  /** The tick counts. */
  record Ticked(TorqueCard card, Tick tick) implements TorqueAnswer {}

  /** Another bolt is due: was this one done all the same? Nothing counts yet. */
  record OutOfTurn(Bolt bolt, Bolt due, String sentence) implements TorqueAnswer {}

  /** The tick does not count; the sentence says why and what to do. */
  record Refused(String sentence) implements TorqueAnswer {}
}
