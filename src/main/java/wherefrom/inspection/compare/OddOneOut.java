package wherefrom.inspection.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which members of a set differ from the rest. A member is odd when its modified z-score, 0.6745
 * times its distance from the median over the median distance, passes 3.5 (Iglewicz and Hoaglin, as
 * in the NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17, from memory) and the distance
 * is more than the readings' uncertainty can make. It cannot be said of fewer than five.
 *
 * <p>Where the members are of two sides that differ by design, as intake and exhaust do, each is
 * held against the middle of its own side; the distances of all are judged together. A side of
 * fewer than three has no middle of its own: of its members nothing is said.
 *
 * @param members in the order given
 * @param middles of the sides, in the order in which they are first met
 */
public record OddOneOut(List<Member> members, List<Middle> middles) {
  /** The score from which a member is odd. */
  public static final double LIMIT = 3.5;

  /** The fewest members of which one can be called odd. */
  public static final int FEWEST = 5;

  /** The fewest of a side that have a middle to be held against. */
  private static final int FEWEST_OF_A_SIDE = 3;

  private static final double NORMAL = 0.6745;

  /** A coverage factor of 2, for two readings of one uncertainty. */
  private static final double COVERAGE = 2 * Math.sqrt(2);

  /** A member and what may be said about it. */
  public record Member(String name, double value, double distance, double score, boolean odd) {}

  /**
   * The middle of a side.
   *
   * @param side its name; empty where there is one side only
   * @param count how many were measured
   */
  public record Middle(String side, double median, int count) {
    private boolean says() {
      return count >= FEWEST_OF_A_SIDE;
    }
  }

  public OddOneOut {
    members = List.copyOf(members);
    middles = List.copyOf(middles);
  }

  /**
   * Compares a set.
   *
   * @param u the readings' standard uncertainty, in their unit; 0 when unknown
   */
  public static OddOneOut of(List<String> names, double[] values, double u) {
    return of(names, Collections.nCopies(names.size(), ""), values, u);
  }

  /**
   * Compares a set of which each member is held against its own side.
   *
   * @param sides the name of each member's side
   * @param u the readings' standard uncertainty, in their unit; 0 when unknown
   */
  public static OddOneOut of(List<String> names, List<String> sides, double[] values, double u) {
    if (names.size() != values.length || sides.size() != values.length || values.length == 0) {
      throw new IllegalArgumentException("a set needs as many names as values, and at least one");
    }
    List<Middle> middles =
        sides.stream().distinct().map(side -> middle(side, sides, values)).toList();
    double[] judged =
        IntStream.range(0, values.length)
            .filter(at -> of(sides.get(at), middles).says())
            .mapToDouble(at -> values[at] - of(sides.get(at), middles).median())
            .toArray();
    // Where more than half are alike to the last digit, the uncertainty is the only scale.
    double scale = Math.max(judged.length == 0 ? 0 : Medians.deviation(judged, 0), NORMAL * u);
    List<Member> members = new ArrayList<>();
    for (int at = 0; at < values.length; at++) {
      Middle middle = of(sides.get(at), middles);
      boolean telling = middle.says() && judged.length >= FEWEST;
      members.add(member(names.get(at), values[at], middle, scale, u, telling));
    }
    return new OddOneOut(members, middles);
  }

  private static Member member(
      String name, double value, Middle middle, double scale, double u, boolean telling) {
    double distance = value - middle.median();
    double score = scale > 0 ? NORMAL * distance / scale : distance == 0 ? 0 : LIMIT * 100;
    boolean odd = telling && Math.abs(score) > LIMIT && Math.abs(distance) > COVERAGE * u;
    return new Member(name, value, distance, score, odd);
  }

  private static Middle middle(String side, List<String> sides, double[] values) {
    double[] own =
        IntStream.range(0, values.length)
            .filter(at -> sides.get(at).equals(side))
            .mapToDouble(at -> values[at])
            .toArray();
    return new Middle(side, Medians.of(own), own.length);
  }

  private static Middle of(String side, List<Middle> middles) {
    return middles.stream().filter(one -> one.side().equals(side)).findFirst().orElseThrow();
  }

  /** The members that differ, the farthest first. */
  public List<Member> odd() {
    return members.stream()
        .filter(Member::odd)
        .sorted((one, two) -> Double.compare(Math.abs(two.distance()), Math.abs(one.distance())))
        .toList();
  }

  /** Whether so few can be held against a middle that none is named odd. */
  public boolean isTooFew() {
    return middles.stream().filter(Middle::says).mapToInt(Middle::count).sum() < FEWEST;
  }
}
