package wherefrom.job.torque;

import wherefrom.workings.torque.TorqueAnswer;

/** What a deed on a torque card gives. */
public sealed interface TorqueStep {
  /** It is in the job. */
  record Done(KeptCard card, String sentence) implements TorqueStep {}

  /** Another bolt is due; nothing is in the job yet. */
  record Questioned(KeptCard card, TorqueAnswer.OutOfTurn question) implements TorqueStep {}

  /** It is not in the job; the sentence says why and what to do. */
  record Refused(String sentence) implements TorqueStep {}
}
