package wherefrom.job;

import wherefrom.job.entry.BoltChecked;
import wherefrom.job.entry.BoltTightened;
import wherefrom.job.entry.TorqueCardBegun;
import wherefrom.job.entry.TorqueCardDropped;

/** What happened on torque cards, in words, without a full stop. */
final class TorqueWords {
  /** The kinds of entries that are said here. */
  static final EntryRows<EntryWords, String> ROWS =
      EntryRows.<EntryWords, String>none()
          .on(TorqueCardBegun.class, (words, begun) -> begun(begun))
          .on(BoltTightened.class, (words, tightened) -> tightened(tightened))
          .on(BoltChecked.class, (words, checked) -> checked(checked))
          .on(TorqueCardDropped.class, (words, dropped) -> dropped(dropped));

  private TorqueWords() {}

  private static String begun(TorqueCardBegun begun) {
    return "torque card " + begun.card() + " written: " + begun.fastener();
  }

  private static String tightened(BoltTightened tightened) {
    return "torque card "
        + tightened.card()
        + ": bolt "
        + tightened.bolt()
        + " done, stage "
        + tightened.stage()
        + by(tightened.person(), tightened.outOfTurn());
  }

  private static String checked(BoltChecked checked) {
    return "torque card "
        + checked.card()
        + ": bolt "
        + checked.bolt()
        + " checked"
        + by(checked.person(), checked.outOfTurn());
  }

  private static String dropped(TorqueCardDropped dropped) {
    return "torque card " + dropped.card() + " dropped: " + dropped.reason();
  }

  private static String by(String person, boolean outOfTurn) {
    return ", by " + person + (outOfTurn ? ", out of turn" : "");
  }
}
