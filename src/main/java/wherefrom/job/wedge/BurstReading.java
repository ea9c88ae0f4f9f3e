package wherefrom.job.wedge;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import wherefrom.job.wedge.CodeFinder.Found;
import wherefrom.job.wedge.CodeFinder.Run;
import wherefrom.parts.CheckDigits;
import wherefrom.parts.TagCode;

/**
 * Says what a finished burst was, reading it from its end: scanners end their codes, people's
 * typing comes before. Check digits decide; time only tells a foreign or damaged scan from typing.
 */
final class BurstReading {
  /** Scanners at work took up to 100 ms a key; people take longer over sixteen digits. */
  static final int SLOWEST_SCANNER_MS = 120;

  /** No person keeps this up for {@link #LEAST_FOREIGN} characters. */
  static final int FASTEST_PERSON_MS = 60;

  static final int LEAST_FOREIGN = 6;

  /** A run of ours may have lost two characters, or be two codes with no Enter between. */
  private static final int LEAST_DAMAGED = TagCode.LENGTH - 2;

  private static final int MOST_DAMAGED = 2 * TagCode.LENGTH;

  private final String suffix;
  private final CodeFinder finder;

  BurstReading(ScannerSetup setup) {
    this.suffix = setup.suffix();
    this.finder = new CodeFinder(setup);
  }

  /**
   * @param terminator the Enter or Tab that ended the burst; empty after a pause
   */
  List<BurstAnswer> read(Burst burst, String terminator) {
    Deque<BurstAnswer> answers = new ArrayDeque<>();
    int end = burst.size();
    String tail = terminator;
    Optional<Found> found = finder.find(burst, beforeSuffix(burst, end));
    while (found.isPresent()) {
      int from = found.get().from();
      answers.addFirst(new BurstAnswer.Scan(found.get().code(), burst.text(from, end) + tail));
      tail = "";
      end = from;
      found = finder.find(burst, beforeSuffix(burst, end));
    }
    readRest(burst, end, tail, answers);
    return List.copyOf(answers);
  }

  private int beforeSuffix(Burst burst, int end) {
    return burst.endsWith(suffix, end) ? end - suffix.codePointCount(0, suffix.length()) : end;
  }

  /** What stands before the scans, if any; fast text that runs into a scan is a busy window's. */
  private void readRest(Burst burst, int end, String tail, Deque<BurstAnswer> answers) {
    if (end == 0 && tail.isEmpty()) {
      return;
    }
    int stop = beforeSuffix(burst, end);
    Run run = finder.longestRun(burst, stop);
    int from = end;
    if (isDamagedScan(burst, run, stop)) {
      from = run.from();
      answers.addFirst(damaged(run.digits(), burst.text(from, end) + tail));
    } else if (answers.isEmpty() && end - fastFrom(burst, end) >= LEAST_FOREIGN) {
      from = fastFrom(burst, end);
      answers.addFirst(
          new BurstAnswer.Foreign(burst.text(from, stop), burst.text(from, end) + tail));
    }
    String rest = burst.text(0, from) + (from == end ? tail : "");
    if (!rest.isEmpty()) {
      answers.addFirst(new BurstAnswer.Typing(rest));
    }
  }

  private static boolean isDamagedScan(Burst burst, Run run, int stop) {
    int length = run.digits().length();
    return length >= LEAST_DAMAGED
        && length <= MOST_DAMAGED
        && burst.meanGap(run.from(), stop) <= SLOWEST_SCANNER_MS;
  }

  /** Sixteen digits that agree and yet are no tag were made by somebody else. */
  private static BurstAnswer damaged(String digits, String typed) {
    boolean agrees = digits.length() == TagCode.LENGTH && CheckDigits.agree(digits);
    return agrees
        ? new BurstAnswer.Foreign(digits, typed)
        : new BurstAnswer.BadCheck(digits, typed);
  }

  /** Where the last stretch begins that came faster than a person types. */
  private static int fastFrom(Burst burst, int end) {
    int from = end;
    while (from > 0 && (from == end || burst.gap(from) <= FASTEST_PERSON_MS)) {
      from--;
    }
    return from;
  }
}
