package wherefrom.inspection.measure;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.quantity.Dimension;

/**
 * What limits are typed for: the results of a plan of readings, or the clearance of a pair.
 *
 * @param key the name in files, of the plan or of the pair
 * @param dimension what a limit of it is
 * @param signed whether it may be negative
 * @param results what can be bounded
 */
public record LimitTarget(
    String key,
    String title,
    Dimension dimension,
    boolean signed,
    List<ResultKeys.Bounded> results) {

  public LimitTarget {
    results = List.copyOf(results);
  }

  public static LimitTarget of(ReadingPlan plan) {
    return new LimitTarget(
        plan.key(),
        plan.title(),
        plan.stations().get(0).dimension(),
        plan.least() < 0,
        ResultKeys.of(plan));
  }

  public static LimitTarget of(ClearancePair pair) {
    String words = pair.title().toLowerCase(java.util.Locale.ROOT) + " clearance";
    return new LimitTarget(
        pair.key(),
        pair.title(),
        Dimension.LENGTH,
        pair.tight(),
        List.of(new ResultKeys.Bounded(ClearancePair.CLEARANCE, words)));
  }

  /** Every one: plans first, then pairs. */
  public static List<LimitTarget> all() {
    return Stream.concat(
            ReadingPlans.all().stream().map(LimitTarget::of),
            ClearancePairs.all().stream().map(LimitTarget::of))
        .toList();
  }

  public static Optional<LimitTarget> find(String key) {
    return ReadingPlans.find(key)
        .map(LimitTarget::of)
        .or(() -> ClearancePairs.find(key).map(LimitTarget::of));
  }

  /** The result of this name. */
  public Optional<ResultKeys.Bounded> findResult(String result) {
    return results.stream().filter(one -> one.key().equals(result)).findFirst();
  }
}
