package wherefrom.workings.chart;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A plot ready to be drawn: curves with their band, levels across, columns with their limits.
 * Everything carries its name, so that nothing is told by colour alone.
 */
public record Chart(
    String title,
    Axis across,
    Axis up,
    List<Trace> traces,
    List<Level> levels,
    List<Column> columns) {

  /** A named curve. */
  public record Trace(String name, List<Point> points) {
    public Trace {
      points = List.copyOf(points);
    }
  }

  /** A point with the band of ±2·u round it. */
  public record Point(double across, double up, double low, double high) {}

  /** A named level across the whole plot. */
  public record Level(String words, double up) {}

  /**
   * One thing beside its limits.
   *
   * @param place where it stands on the axis across
   * @param value empty where only limits are drawn
   * @param low the lower end of the band
   * @param high the upper end of the band
   * @param limits short marks with a word
   * @param verdict a word under the column; may be empty
   */
  public record Column(
      double place,
      OptionalDouble value,
      double low,
      double high,
      List<Level> limits,
      String verdict) {
    public Column {
      limits = List.copyOf(limits);
    }
  }

  public Chart {
    traces = List.copyOf(traces);
    levels = List.copyOf(levels);
    columns = List.copyOf(columns);
  }
}
