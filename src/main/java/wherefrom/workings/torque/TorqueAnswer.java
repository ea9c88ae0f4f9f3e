package wherefrom.workings.torque;

/** What a tick gives: the card after it, or why it was refused. */
public sealed interface TorqueAnswer {
  /** The tick counts. */
  record Ticked(TorqueCard card) implements TorqueAnswer {}

  /** The tick does not count; the sentence says why and what to do. */
  record Refused(String sentence) implements TorqueAnswer {}
}
