package wherefrom.workings.torque;

/** What a tick gives: the card after it, or why it does not count. */
public sealed interface TorqueAnswer {
  /** The tick counts. */
  record Ticked(TorqueCard card, Tick tick) implements TorqueAnswer {}

  /** Another bolt is due: was this one done all the same? Nothing counts yet. */
  record OutOfTurn(Bolt bolt, Bolt due, String sentence) implements TorqueAnswer {}

  /** The tick does not count; the sentence says why and what to do. */
  record Refused(String sentence) implements TorqueAnswer {}
}
