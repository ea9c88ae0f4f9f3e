package wherefrom.inspection.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tells untagged parts apart by what was recorded of them. The whole group is matched at once: each
 * record belongs to at most one part. Errors are taken as normal with the stated uncertainties, and
 * one in a thousand million readings may be anything.
 */
public final class Reidentification {
  /** From this on a match is called certain. */
  public static final double CERTAIN = 0.9999;

  /** From this on a match is called likely. */
  public static final double LIKELY = 0.95;

  /** How many standard uncertainties a match may be off. */
  private static final double FARTHEST = 4.5;

  private static final double STRAY = 1e-9;

  private Reidentification() {}

  /** Whether a group can be matched: all measured alike, none more than there are records. */
  public static Optional<String> findFault(List<Fingerprint> found, List<Fingerprint> recorded) {
    if (found.isEmpty() || recorded.isEmpty()) {
      return Optional.of("Measure at least one untagged part that has a record.");
    }
    if (found.size() > recorded.size()) {
      return Optional.of("There are more untagged parts than records. Count again.");
    }
    if (recorded.size() > Marginals.MOST) {
      return Optional.of(
          "More than " + Marginals.MOST + " at once. Split them into kinds and banks.");
    }
    int features = recorded.get(0).values().size();
    boolean alike =
        found.stream().allMatch(one -> one.values().size() == features)
            && recorded.stream().allMatch(one -> one.values().size() == features);
    return alike
        ? Optional.empty()
        : Optional.of("Measure the same features on every part of the group.");
  }

  /**
   * Matches a group.
   *
   * @param otherTool true when the parts were measured with other instruments than the records, so
   *     that all readings may be off by one amount: of a complete group that amount is taken out
   * @throws IllegalArgumentException when {@link #findFault} names a fault
   */
  public static List<PartMatch> of(
      List<Fingerprint> found, List<Fingerprint> recorded, boolean otherTool) {
    int features = recorded.isEmpty() ? 0 : recorded.get(0).values().size();
    return of(found, recorded, java.util.Collections.nCopies(features, otherTool));
  }

  /**
   * Matches a group by several features, each with an instrument of its own.
   *
   * @param otherTool for each feature whether its instrument is another one than that of the
   *     records
   */
  public static List<PartMatch> of(
      List<Fingerprint> found, List<Fingerprint> recorded, List<Boolean> otherTool) {
    findFault(found, recorded)
        .ifPresent(
            fault -> {
              throw new IllegalArgumentException(fault);
            });
    List<Fingerprint> rows = levelled(found, recorded, otherTool);
    double[][] cost = cost(rows, recorded);
    int[] best = Assignment.cheapest(cost);
    double[][] shares = Marginals.of(weights(cost));
    List<PartMatch> matches = new ArrayList<>();
    for (int row = 0; row < found.size(); row++) {
      matches.add(match(found.get(row), recorded, best[row], shares[row], cost[row][best[row]]));
    }
    return matches;
  }

  /** The means of a complete group do not depend on who is who. */
  private static List<Fingerprint> levelled(
      List<Fingerprint> found, List<Fingerprint> recorded, List<Boolean> otherTool) {
    if (found.size() != recorded.size() || !otherTool.contains(true)) {
      return found;
    }
    List<Fingerprint> level = new ArrayList<>();
    for (Fingerprint one : found) {
      List<Double> values = new ArrayList<>();
      for (int at = 0; at < one.values().size(); at++) {
        double off = otherTool.get(at) ? mean(found, at) - mean(recorded, at) : 0;
        values.add(one.values().get(at) - off);
      }
      level.add(new Fingerprint(one.name(), values, one.uncertainties()));
    }
    return level;
  }

  private static double mean(List<Fingerprint> group, int feature) {
    return group.stream().mapToDouble(one -> one.values().get(feature)).average().orElseThrow();
  }

  /** Sum over the features of the squared distance in standard uncertainties. */
  private static double[][] cost(List<Fingerprint> found, List<Fingerprint> recorded) {
    double[][] cost = new double[found.size()][recorded.size()];
    for (int row = 0; row < found.size(); row++) {
      for (int column = 0; column < recorded.size(); column++) {
        cost[row][column] = distance(found.get(row), recorded.get(column));
      }
    }
    return cost;
  }

  private static double distance(Fingerprint one, Fingerprint other) {
    double sum = 0;
    for (int at = 0; at < one.values().size(); at++) {
      double away = one.values().get(at) - other.values().get(at);
      double u = Math.hypot(one.uncertainties().get(at), other.uncertainties().get(at));
      sum += away * away / (u * u);
    }
    return sum;
  }

  private static double[][] weights(double[][] cost) {
    double[][] weights = new double[cost.length][];
    for (int row = 0; row < cost.length; row++) {
      double least = java.util.Arrays.stream(cost[row]).min().orElseThrow();
      weights[row] =
          java.util.Arrays.stream(cost[row]).map(c -> Math.exp((least - c) / 2) + STRAY).toArray();
    }
    return weights;
  }

  private static PartMatch match(
      Fingerprint found, List<Fingerprint> recorded, int best, double[] shares, double cost) {
    int next = -1;
    for (int column = 0; column < shares.length; column++) {
      if (column != best && (next < 0 || shares[column] > shares[next])) {
        next = column;
      }
    }
    boolean far = cost > FARTHEST * FARTHEST * found.values().size();
    return new PartMatch(
        found.name(),
        recorded.get(best).name(),
        shares[best],
        next < 0 ? Optional.empty() : Optional.of(recorded.get(next).name()),
        next < 0 ? 0 : shares[next],
        certainty(shares[best], far));
  }

  private static PartMatch.Certainty certainty(double share, boolean far) {
    if (far) {
      return PartMatch.Certainty.MATCHES_NONE;
    }
    if (share >= CERTAIN) {
      return PartMatch.Certainty.CERTAIN;
    }
    return share >= LIKELY ? PartMatch.Certainty.LIKELY : PartMatch.Certainty.CANNOT_TELL;
  }
}
