package wherefrom.inspection.compare;

import java.util.ArrayList;
import java.util.List;

/**
 * A straightedge laid over a row of points such as stud tops: the line that up to half of the
 * points cannot pull away (repeated medians, Siegel 1982, from memory), and how far each stands off
 * it.
 *
 * @param slope per unit of position
 * @param height at position 0
 */
public record StraightLine(double slope, double height, List<Point> points) {
  /** The fewest points over which a line says anything about one of them. */
  public static final int FEWEST = 4;

  /** A suspect stud stands more than 0.005 in proud (common practice, no source); in mm. */
  public static final double SUSPECT_MM = 0.127;

  /** A failed stud stands more than 0.010 in proud (common practice, no source); in mm. */
  public static final double FAIL_MM = 0.254;

  private static final double COVERAGE = 2;

  /** What may be said about a point, the uncertainty allowed for. */
  public enum Stand {
    LEVEL,
    /** It may stand off the line: the uncertainty is too large to say. */
    UNDECIDED,
    SUSPECT,
    FAIL
  }

  /**
   * A point of the row.
   *
   * @param proud how far above the line; negative below
   * @param u standard uncertainty of {@code proud}: of its reading and of the line
   */
  public record Point(
      String name, double position, double reading, double proud, double u, Stand stand) {}

  public StraightLine {
    points = List.copyOf(points);
  }

  /**
   * Lays the line.
   *
   * @param positions along the row, all different
   * @param heights in mm
   * @param u standard uncertainty of a height, in mm
   */
  public static StraightLine of(
      List<String> names, double[] positions, double[] heights, double u) {
    int count = names.size();
    if (count < FEWEST || positions.length != count || heights.length != count) {
      throw new IllegalArgumentException("a line needs at least " + FEWEST + " points");
    }
    double slope = slope(positions, heights);
    double[] rests = new double[count];
    for (int at = 0; at < count; at++) {
      rests[at] = heights[at] - slope * positions[at];
    }
    double height = Medians.of(rests);
    List<Point> points = new ArrayList<>();
    for (int at = 0; at < count; at++) {
      double proud = heights[at] - height - slope * positions[at];
      double uncertainty = u * Math.sqrt(1 + leverage(positions, at));
      points.add(
          new Point(
              names.get(at),
              positions[at],
              heights[at],
              proud,
              uncertainty,
              stand(proud, uncertainty)));
    }
    return new StraightLine(slope, height, points);
  }

  /** The median over the points of the median slope to the others. */
  private static double slope(double[] positions, double[] heights) {
    int count = positions.length;
    double[] medians = new double[count];
    for (int at = 0; at < count; at++) {
      double[] slopes = new double[count - 1];
      for (int other = 0, next = 0; other < count; other++) {
        if (other != at) {
          slopes[next++] = (heights[other] - heights[at]) / (positions[other] - positions[at]);
        }
      }
      medians[at] = Medians.of(slopes);
    }
    return Medians.of(medians);
  }

  /** Of a line by least squares through the other points; a median line is a little worse. */
  private static double leverage(double[] positions, int at) {
    double mean = 0;
    for (double position : positions) {
      mean += position / positions.length;
    }
    double squares = 0;
    for (double position : positions) {
      squares += (position - mean) * (position - mean);
    }
    double away = positions[at] - mean;
    return (Math.PI / 2) * (1.0 / positions.length + away * away / squares);
  }

  private static Stand stand(double proud, double u) {
    double margin = COVERAGE * u;
    if (proud - margin > FAIL_MM) {
      return Stand.FAIL;
    }
    if (proud - margin > SUSPECT_MM) {
      return Stand.SUSPECT;
    }
    return proud + margin > SUSPECT_MM ? Stand.UNDECIDED : Stand.LEVEL;
  }

  /** The points that stand proud, the highest first. */
  public List<Point> proud() {
    return points.stream()
        .filter(point -> point.stand() == Stand.SUSPECT || point.stand() == Stand.FAIL)
        .sorted((one, two) -> Double.compare(two.proud(), one.proud()))
        .toList();
  }
}
