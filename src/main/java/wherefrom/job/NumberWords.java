package wherefrom.job;

import wherefrom.job.entry.FiguresKept;
import wherefrom.job.entry.JobEntry;

/** What happened to numbers, in words. */
final class NumberWords {
  private NumberWords() {}

  /** The entry in words, without a full stop. */
  static String of(JobEntry entry) {
    if (entry instanceof FiguresKept kept) {
      return kept.name().isEmpty()
          ? "figures thrown away: " + kept.sheet()
          : "figures of " + kept.name() + " kept";
    }
    return TorqueWords.of(entry);
  }
}
