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

  /** A named level across the whole plot, with the band of ±2·u round it. */
  public record Level(String words, double up, double low, double high) {

    /** A level that is known exactly. */
    public static Level exact(String words, double up) {
      return new Level(words, up, up, up);
    }
  }

  /**
   * One thing beside its limits.
   *
   * @param place where it stands on the axis across
   * @param value empty where only limits are drawn
   * @param low the lower end of the band
   * @param high the upper end of the band
   * @param limits where the short marks are
   * @param verdict a word under the column; may be empty
   * @param odd whether it stands out: a square in place of the dot
   */
  public record Column(
      double place,
      OptionalDouble value,
      double low,
      double high,
      List<Double> limits,
      String verdict,
      boolean odd) {
    public Column {
      limits = List.copyOf(limits);
    }

    /** Limits and a word, without a value. */
    public static Column ofLimits(double place, List<Double> limits, String verdict) {
      return new Column(place, OptionalDouble.empty(), 0, 0, limits, verdict, false);
    }

    /** A value with its band. */
    public static Column ofValue(double place, double value, double low, double high) {
      return new Column(place, OptionalDouble.of(value), low, high, List.of(), "", false);
    }

    /** The same with limits and a word. */
    public Column with(List<Double> more, String word, boolean standsOut) {
      return new Column(place, value, low, high, more, word, standsOut);
    }
  }

  public Chart {
    traces = List.copyOf(traces);
    levels = List.copyOf(levels);
    columns = List.copyOf(columns);
  }
}
