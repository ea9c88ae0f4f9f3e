package wherefrom.logbook;

import java.util.Set;
import java.util.function.IntSupplier;
import wherefrom.job.LogbookException;
import wherefrom.parts.TagCode;

/** Numbers that tell one engine's tags from another's. */
final class EngineNumbers {
  private static final int MOST_TRIES = 10_000;

  private final IntSupplier random;

  /**
   * @param random any numbers, evenly spread
   */
  EngineNumbers(IntSupplier random) {
    this.random = random;
  }

  /** A number from 1 to 9,999,999 that is not in use; 0 is that of the action cards. */
  int next(Set<Integer> inUse) {
    for (int tries = 0; tries < MOST_TRIES; tries++) {
      int number = 1 + Math.floorMod(random.getAsInt(), TagCode.MOST_ENGINE);
      if (!inUse.contains(number)) {
        return number;
      }
    }
    throw new LogbookException("No free engine number was found. Keep the jobs on two shelves.");
  }
}
