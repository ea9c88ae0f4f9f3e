package wherefrom.workings.torque;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import wherefrom.workings.Source;

/**
 * Bolts in rows and columns, numbered row by row from the top left, and the order to tighten them
 * in.
 *
 * @param order every bolt once
 * @param source where the order comes from
 */
public record BoltPattern(int rows, int columns, List<Bolt> order, Source source) {
  public static final int MOST = 12;

  public BoltPattern {
    order = List.copyOf(order);
  }

  /**
   * From the centre outward, each bolt followed by the one straight across the centre. Common
   * practice: the order in the engine's service information outranks it.
   *
   * @throws IllegalArgumentException where rows or columns are outside 1 to 12
   */
  public static BoltPattern ofRectangle(int rows, int columns) {
    List<Bolt> bolts = bolts(rows, columns);
    Set<Bolt> order = new LinkedHashSet<>();
    bolts.stream()
        .sorted(
            Comparator.comparingInt((Bolt bolt) -> fromCentre(bolt, rows, columns))
                .thenComparingInt(Bolt::number))
        .forEach(
            bolt -> {
              order.add(bolt);
              order.add(bolts.get(bolts.size() - bolt.number()));
            });
    return new BoltPattern(rows, columns, List.copyOf(order), Source.commonPractice());
  }

  /** The order of the user's own; empty unless it names every bolt once. */
  public static Optional<BoltPattern> findOwn(
      int rows, int columns, List<Integer> numbers, Source source) {
    List<Bolt> bolts = bolts(rows, columns);
    boolean complete =
        numbers.size() == bolts.size()
            && new TreeSet<>(numbers)
                .equals(new TreeSet<>(bolts.stream().map(Bolt::number).toList()));
    return complete
        ? Optional.of(
            new BoltPattern(
                rows, columns, numbers.stream().map(n -> bolts.get(n - 1)).toList(), source))
        : Optional.empty();
  }

  /** The order to loosen in: the reverse. */
  public List<Bolt> loosening() {
    List<Bolt> reverse = new ArrayList<>(order);
    Collections.reverse(reverse);
    return List.copyOf(reverse);
  }

  private static List<Bolt> bolts(int rows, int columns) {
    if (rows < 1 || columns < 1 || rows > MOST || columns > MOST) {
      throw new IllegalArgumentException("a pattern has 1 to " + MOST + " rows and columns");
    }
    List<Bolt> bolts = new ArrayList<>();
    for (int i = 0; i < rows * columns; i++) {
      bolts.add(new Bolt(i + 1, i / columns, i % columns));
    }
    return bolts;
  }

  /** The squared distance from the centre, in half pitches. */
  private static int fromCentre(Bolt bolt, int rows, int columns) {
    int down = 2 * bolt.row() - (rows - 1);
    int across = 2 * bolt.column() - (columns - 1);
    return down * down + across * across;
  }
}
