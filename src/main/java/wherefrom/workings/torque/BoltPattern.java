package wherefrom.workings.torque;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import wherefrom.workings.Source;

/**
 * Bolts on a grid and the order to tighten them in. A position of the grid is counted row by row
 * from 1 at the top left; a position that the order does not name holds no bolt.
 *
 * @param order the bolts as they follow each other, numbered 1, 2, 3 …
 * @param source where the order comes from
 */
public record BoltPattern(int rows, int columns, List<Bolt> order, Source source) {
  /** As many as can be drawn with each bolt large enough for a glove. */
  public static final int MOST_ROWS = 5;

  public static final int MOST_COLUMNS = 12;

  public BoltPattern {
    order = List.copyOf(order);
  }

  /** Whether a grid of this size can be drawn. */
  public static boolean isSize(int rows, int columns) {
    return rows >= 1 && columns >= 1 && rows <= MOST_ROWS && columns <= MOST_COLUMNS;
  }

  /**
   * From the centre outward, each bolt followed by the one straight across the centre. Common
   * practice: the order in the engine's service information outranks it.
   *
   * @throws IllegalArgumentException where no grid of this size can be drawn
   */
  public static BoltPattern ofRectangle(int rows, int columns) {
    int all = rows * columns;
    Set<Integer> positions = new LinkedHashSet<>();
    IntStream.rangeClosed(1, all)
        .boxed()
        .sorted(
            Comparator.comparingInt((Integer position) -> fromCentre(position, rows, columns))
                .thenComparing(Comparator.naturalOrder()))
        .forEach(
            position -> {
              positions.add(position);
              positions.add(all + 1 - position);
            });
    return of(rows, columns, List.copyOf(positions), Source.commonPractice());
  }

  /** The order of the user's own; empty unless each position is on the grid and named once. */
  public static Optional<BoltPattern> findOwn(
      int rows, int columns, List<Integer> positions, Source source) {
    boolean good =
        isSize(rows, columns)
            && !positions.isEmpty()
            && positions.size() == Set.copyOf(positions).size()
            && positions.stream().allMatch(at -> at >= 1 && at <= rows * columns);
    return good ? Optional.of(of(rows, columns, positions, source)) : Optional.empty();
  }

  private static BoltPattern of(int rows, int columns, List<Integer> positions, Source source) {
    if (!isSize(rows, columns)) {
      throw new IllegalArgumentException(
          "A pattern has 1 to " + MOST_ROWS + " rows of 1 to " + MOST_COLUMNS + " bolts.");
    }
    List<Bolt> order = new ArrayList<>();
    for (int position : positions) {
      int at = position - 1;
      order.add(new Bolt(order.size() + 1, at / columns, at % columns));
    }
    return new BoltPattern(rows, columns, order, source);
  }

  /** The positions in the order of tightening. */
  public List<Integer> positions() {
    return order.stream().map(bolt -> bolt.row() * columns + bolt.column() + 1).toList();
  }

  /** The bolt at a position, where there is one. */
  public Optional<Bolt> findAt(int row, int column) {
    return order.stream().filter(bolt -> bolt.row() == row && bolt.column() == column).findFirst();
  }

  public Optional<Bolt> find(int number) {
    return number >= 1 && number <= order.size()
        ? Optional.of(order.get(number - 1))
        : Optional.empty();
  }

  /** The order to loosen in: the reverse. */
  public List<Bolt> loosening() {
    List<Bolt> reverse = new ArrayList<>(order);
    Collections.reverse(reverse);
    return List.copyOf(reverse);
  }

  /** The squared distance from the centre, in half pitches. */
  private static int fromCentre(int position, int rows, int columns) {
    int down = 2 * ((position - 1) / columns) - (rows - 1);
    int across = 2 * ((position - 1) % columns) - (columns - 1);
    return down * down + across * across;
  }
}
