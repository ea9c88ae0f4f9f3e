package wherefrom.job;

import wherefrom.job.entry.BoltChecked;
import wherefrom.job.entry.BoltTightened;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.TorqueCardBegun;
import wherefrom.job.entry.TorqueCardDropped;

/** What happened on torque cards, in words. */
public final class TorqueWords {
  private TorqueWords() {}

  /** The entry in words, without a full stop. */
  public static String of(JobEntry entry) {
    if (entry instanceof TorqueCardBegun begun) {
      return "torque card " + begun.card() + " written: " + begun.fastener();
    }
    if (entry instanceof BoltTightened tightened) {
      return "torque card "
          + tightened.card()
          + ": bolt "
          + tightened.bolt()
          + " tightened, stage "
          + tightened.stage()
          + by(tightened.person(), tightened.outOfTurn());
    }
    if (entry instanceof BoltChecked checked) {
      return "torque card "
          + checked.card()
          + ": bolt "
          + checked.bolt()
          + " checked"
          + by(checked.person(), checked.outOfTurn());
    }
    if (entry instanceof TorqueCardDropped dropped) {
      return "torque card " + dropped.card() + " given up: " + dropped.reason();
    }
    throw new IllegalArgumentException("no words for " + entry.getClass().getSimpleName());
  }

  private static String by(String person, boolean outOfTurn) {
    return ", by " + person + (outOfTurn ? ", out of turn" : "");
  }
}
