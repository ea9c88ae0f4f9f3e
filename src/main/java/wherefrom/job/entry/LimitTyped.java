package wherefrom.job.entry;

import java.util.Optional;
import wherefrom.quantity.Amount;

/**
 * A limit of this very engine, with manual and page; both ends in one unit, of two that one which
 * holds both exactly. An absent end is no limit; where both are absent an earlier one is taken
 * away.
 */
public record LimitTyped(
    String plan, String result, Optional<Amount> lower, Optional<Amount> upper, String source)
    implements JobEntry {
  public LimitTyped {
    if (lower.isPresent() && upper.isPresent()) {
      Amount low = lower.get();
      Amount high = upper.get();
      Amount highAsLow = high.to(low.unit());
      boolean exact = highAsLow.inBase().compareTo(high.inBase()) == 0;
      lower = Optional.of(exact ? low : low.to(high.unit()));
      upper = Optional.of(exact ? highAsLow : high);
    }
  }
}
