package wherefrom.job.entry;

import java.util.Optional;
import wherefrom.quantity.Amount;

/**
 * A limit of this very engine, with manual and page; both ends in one unit. An absent end is no
 * limit; where both are absent an earlier one is taken away.
 */
public record LimitTyped(
    String plan, String result, Optional<Amount> lower, Optional<Amount> upper, String source)
    implements JobEntry {
  public LimitTyped {
    Optional<Amount> low = lower;
    upper = upper.map(high -> low.map(end -> high.to(end.unit())).orElse(high));
  }
}
