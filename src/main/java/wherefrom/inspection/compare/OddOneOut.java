package wherefrom.inspection.compare;

import java.util.ArrayList;
import java.util.List;

/**
 * Which members of a set differ from the rest. A member is odd when its modified z-score, 0.6745
 * times its distance from the median over the median distance, passes 3.5 (Iglewicz and Hoaglin, as
 * in the NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17, from memory) and the distance
 * is more than the readings' uncertainty can make. It cannot be said of fewer than five.
 *
 * @param members in the order given
 * @param median the middle of the set
 */
public record OddOneOut(List<Member> members, double median) {
  /** The score from which a member is odd. */
  public static final double LIMIT = 3.5;

  /** The fewest members of which one can be called odd. */
  public static final int FEWEST = 5;

  private static final double NORMAL = 0.6745;

  /** A coverage factor of 2, for two readings of one uncertainty. */
  private static final double COVERAGE = 2 * Math.sqrt(2);

  /** A member and what may be said about it. */
  public record Member(String name, double value, double distance, double score, boolean odd) {}

  public OddOneOut {
    members = List.copyOf(members);
  }

  /**
   * Compares a set.
   *
   * @param u the readings' standard uncertainty, in their unit; 0 when unknown
   */
  public static OddOneOut of(List<String> names, double[] values, double u) {
    if (names.size() != values.length || values.length == 0) {
      throw new IllegalArgumentException("a set needs as many names as values, and at least one");
    }
    double median = Medians.of(values);
    double spread = Medians.deviation(values, median);
    // Where more than half are alike to the last digit, the uncertainty is the only scale.
    double scale = Math.max(spread, NORMAL * u);
    List<Member> members = new ArrayList<>();
    for (int at = 0; at < values.length; at++) {
      double distance = values[at] - median;
      double score = scale > 0 ? NORMAL * distance / scale : distance == 0 ? 0 : LIMIT * 100;
      boolean odd =
          values.length >= FEWEST && Math.abs(score) > LIMIT && Math.abs(distance) > COVERAGE * u;
      members.add(new Member(names.get(at), values[at], distance, score, odd));
    }
    return new OddOneOut(members, median);
  }

  /** The members that differ, the farthest first. */
  public List<Member> odd() {
    return members.stream()
        .filter(Member::odd)
        .sorted((one, two) -> Double.compare(Math.abs(two.distance()), Math.abs(one.distance())))
        .toList();
  }

  public boolean isTooFew() {
    return members.size() < FEWEST;
  }
}
