package wherefrom.job;

import wherefrom.job.entry.BoltTicked;
import wherefrom.job.entry.FiguresKept;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.TorqueCardDropped;
import wherefrom.job.entry.TorqueCardMade;

/** What happened to numbers and torque cards, in words. */
final class NumberWords {
  private NumberWords() {}

  /** The entry in words, without a full stop. */
  static String of(JobEntry entry) {
    if (entry instanceof FiguresKept kept) {
      return kept.name().isEmpty()
          ? "figures thrown away: " + kept.sheet()
          : "figures of " + kept.name() + " kept";
    }
    if (entry instanceof TorqueCardMade made) {
      return "torque card " + made.card() + ": " + made.fastener();
    }
    if (entry instanceof BoltTicked tick) {
      return "torque card " + tick.card() + ", bolt " + tick.bolt() + ", " + tick.person();
    }
    if (entry instanceof TorqueCardDropped dropped) {
      return "torque card " + dropped.card() + " struck out: " + dropped.reason();
    }
    throw new IllegalArgumentException("no words for " + entry.getClass().getSimpleName());
  }
}
