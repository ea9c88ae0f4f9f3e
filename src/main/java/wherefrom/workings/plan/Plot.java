package wherefrom.workings.plan;

import java.util.List;
import wherefrom.quantity.Unit;

/**
 * Curves to draw, without any drawing.
 *
 * @param lines levels to draw across, such as a target or a limit
 */
public record Plot(
    String title,
    String acrossWords,
    Unit acrossUnit,
    String upWords,
    Unit upUnit,
    List<Curve> curves,
    List<Level> lines) {

  /** A named curve. */
  public record Curve(String name, List<Point> points) {
    public Curve {
      points = List.copyOf(points);
    }
  }

  /** One point with its band, which is ±2·u. */
  public record Point(double across, double up, double low, double high) {
    static Point of(double across, double up, double standardUncertainty) {
      double band = COVERAGE * standardUncertainty;
      return new Point(across, up, up - band, up + band);
    }
  }

  /** A level across the plot, in {@code upUnit}. */
  public record Level(String words, double up) {}

  /** Expanded uncertainty for about 95 % (JCGM 100:2008, 6.3.3). */
  public static final double COVERAGE = 2;

  public Plot {
    curves = List.copyOf(curves);
    lines = List.copyOf(lines);
  }
}
