package wherefrom.job.wedge;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import wherefrom.parts.TagCode;

/**
 * Finds a tag's sixteen digits at the end of a burst. Digits may stand before them (half a scan, a
 * person's typing): then the sixteen count only where their lead, whole codes before them, or a
 * plain gap in time shows that they begin there. A doubled or lost character must not shift a code
 * into another that happens to agree.
 */
final class CodeFinder {
  private static final long LEAST_GAP_MS = 30;

  private final List<DigitRow> rows;
  private final Lead lead;

  /** A code and the index at which it begins, with its lead. */
  record Found(TagCode code, int from) {}

  /** The digits at the end of a burst, and the index at which they begin. */
  record Run(String digits, int from) {}

  CodeFinder(ScannerSetup setup) {
    this.rows = DigitRows.of(setup);
    this.lead = new Lead(setup.prefix());
  }

  /** The code that ends at an index; empty where there is none or two rows disagree about it. */
  Optional<Found> find(Burst burst, int end) {
    List<Found> found = rows.stream().flatMap(row -> find(burst, row, end).stream()).toList();
    if (found.stream().map(Found::code).distinct().count() != 1) {
      return Optional.empty();
    }
    return found.stream().min((one, other) -> Integer.compare(one.from(), other.from()));
  }

  private Optional<Found> find(Burst burst, DigitRow row, int end) {
    Run run = run(burst, row, end);
    int length = run.digits().length();
    if (length < TagCode.LENGTH) {
      return Optional.empty();
    }
    int start = end - TagCode.LENGTH;
    int from = lead.start(burst, row, start);
    boolean beginsThere =
        length % TagCode.LENGTH == 0 || from < start || gapStandsOut(burst, start, end);
    return beginsThere
        ? TagCode.find(run.digits().substring(length - TagCode.LENGTH))
            .map(code -> new Found(code, from))
        : Optional.empty();
  }

  private static boolean gapStandsOut(Burst burst, int start, int end) {
    long gap = burst.gap(start);
    return gap >= LEAST_GAP_MS && gap >= 2 * burst.longestGap(start, end);
  }

  /** The longest run of digits that ends at an index, under any row, with its lead set apart. */
  Run longestRun(Burst burst, int end) {
    Run longest = new Run("", end);
    for (DigitRow row : rows) {
      Run run = withoutLead(burst, row, run(burst, row, end));
      if (run.digits().length() > longest.digits().length()) {
        longest = run;
      }
    }
    return longest;
  }

  /** The last character of an AIM identifier is a digit: it belongs to the lead. */
  private Run withoutLead(Burst burst, DigitRow row, Run run) {
    int second = run.from() + 1;
    if (run.digits().isEmpty() || lead.start(burst, row, second) == second) {
      return new Run(run.digits(), lead.start(burst, row, run.from()));
    }
    return new Run(run.digits().substring(1), lead.start(burst, row, second));
  }

  private static Run run(Burst burst, DigitRow row, int end) {
    StringBuilder digits = new StringBuilder();
    int from = end;
    while (from > 0) {
      OptionalInt digit = row.digit(burst.at(from - 1));
      if (digit.isEmpty()) {
        break;
      }
      digits.append(digit.getAsInt());
      from--;
    }
    return new Run(digits.reverse().toString(), from);
  }
}
