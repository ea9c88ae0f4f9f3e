package wherefrom.job.entry;

import java.util.Optional;
import wherefrom.quantity.Amount;

/**
 * One hole of a map of holes, and the length of the bolt that came out of it.
 *
 * @param hole counted from 1
 * @param across where it lies on the drawing, percent from the left, 0 to 100; empty where nobody
 *     said
 * @param down percent from the top, 0 to 100; empty as across is
 * @param length under the head; empty where nobody measured it
 */
public record BoltHole(
    int hole, Optional<Integer> across, Optional<Integer> down, Optional<Amount> length) {
  public BoltHole {
    across.ifPresent(BoltHole::requirePercent);
    down.ifPresent(BoltHole::requirePercent);
  }

  private static void requirePercent(int at) {
    if (at < 0 || at > 100) {
      throw new IllegalArgumentException("a hole lies at 0 to 100 percent, not at " + at);
    }
  }
}
