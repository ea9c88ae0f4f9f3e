package wherefrom.inspection.measure;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.UnitChoice;

/**
 * What limits are typed for: the results of a plan of readings, or the clearance of a pair.
 *
 * @param key the name in files, of the plan or of the pair
 * @param units what a limit of it is typed in
 * @param signed whether it may be negative
 * @param results what can be bounded
 */
public record LimitTarget(
    String key, String title, UnitChoice units, boolean signed, List<ResultKeys.Bounded> results) {

  /** The cylinders' compression, each beside the others. */
  public static final String COMPRESSION = "compression-set";

  /** The least share of the highest reading. */
  public static final String SHARE = "share";

  /** The least rise with oil that counts as one. */
  public static final String RISE = "rise";

  public LimitTarget {
    results = List.copyOf(results);
  }

  public static LimitTarget of(ReadingPlan plan) {
    return new LimitTarget(
        plan.key(), plan.title(), plan.resultUnits(), plan.least() < 0, ResultKeys.of(plan));
  }

  /** What the cylinders' compression is held against as a set. */
  private static LimitTarget ofCompression() {
    return new LimitTarget(
        COMPRESSION,
        "Compression as a set",
        UnitChoice.PERCENT,
        false,
        List.of(
            new ResultKeys.Bounded(SHARE, "share of the highest"),
            new ResultKeys.Bounded(RISE, "rise with oil")));
  }

  public static LimitTarget of(ClearancePair pair) {
    String words = pair.title().toLowerCase(java.util.Locale.ROOT) + " clearance";
    return new LimitTarget(
        pair.key(),
        pair.title(),
        UnitChoice.of(Dimension.LENGTH),
        pair.tight(),
        List.of(new ResultKeys.Bounded(ClearancePair.CLEARANCE, words)));
  }

  /** Every one: plans first, then pairs. */
  public static List<LimitTarget> all() {
    return Stream.of(
            ReadingPlans.all().stream().map(LimitTarget::of),
            ClearancePairs.all().stream().map(LimitTarget::of),
            Stream.of(ofCompression()))
        .flatMap(one -> one)
        .toList();
  }

  public static Optional<LimitTarget> find(String key) {
    return ReadingPlans.find(key)
        .map(LimitTarget::of)
        .or(() -> ClearancePairs.find(key).map(LimitTarget::of))
        .or(() -> Optional.of(ofCompression()).filter(one -> one.key().equals(key)));
  }

  /** The result of this name. */
  public Optional<ResultKeys.Bounded> findResult(String result) {
    return results.stream().filter(one -> one.key().equals(result)).findFirst();
  }
}
