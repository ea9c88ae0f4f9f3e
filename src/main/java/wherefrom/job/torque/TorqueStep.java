package wherefrom.job.torque;

import java.util.function.Function;
import wherefrom.workings.torque.TorqueAnswer;

/** What a deed on a torque card gives. */
public sealed interface TorqueStep {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<Done, R> done, Function<Questioned, R> questioned, Function<Refused, R> refused) {
    if (this instanceof Done one) {
      return done.apply(one);
    }
    if (this instanceof Questioned one) {
      return questioned.apply(one);
    }
    return refused.apply((Refused) this);
  }

  /** It is in the job. */
  record Done(KeptCard card, String sentence) implements TorqueStep {}

  /** Another bolt is due; nothing is in the job yet. */
  record Questioned(KeptCard card, TorqueAnswer.OutOfTurn question) implements TorqueStep {}

  /** It is not in the job; the sentence says why and what to do. */
  record Refused(String sentence) implements TorqueStep {}
}
