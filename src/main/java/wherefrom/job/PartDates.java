package wherefrom.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * When things happened to a part, each as the number of the entry that tells; 0 for never.
 *
 * @param takenOn when it came into the job as a new part; 0 for one that came out of the engine
 * @param firstFitted when it was fitted for the first time since
 * @param movedAt when it came where it is
 * @param decidedAt when it was decided about last
 * @param lookedAt when each of its checks was answered last
 */
public record PartDates(
    long takenOn, long firstFitted, long movedAt, long decidedAt, Map<String, Long> lookedAt) {
  static final PartDates NEVER = new PartDates(0, 0, 0, 0, Map.of());

  public PartDates {
    lookedAt =
        lookedAt.isEmpty() ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(lookedAt));
  }

  static PartDates takenOn(long sequence) {
    return new PartDates(sequence, 0, sequence, 0, Map.of());
  }

  PartDates moved(long sequence) {
    return new PartDates(takenOn, firstFitted, sequence, decidedAt, lookedAt);
  }

  PartDates fitted(long sequence) {
    long first = firstFitted == 0 ? sequence : firstFitted;
    return new PartDates(takenOn, first, sequence, decidedAt, lookedAt);
  }

  PartDates decided(long sequence) {
    return new PartDates(takenOn, firstFitted, movedAt, sequence, lookedAt);
  }

  PartDates looked(String check, long sequence) {
    Map<String, Long> more = new LinkedHashMap<>(lookedAt);
    more.put(check, sequence);
    return new PartDates(takenOn, firstFitted, movedAt, decidedAt, more);
  }
}
