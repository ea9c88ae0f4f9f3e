package wherefrom.workings.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wherefrom.workings.chart.ChartMark.Look;
import wherefrom.workings.chart.ChartMark.Side;

/** Lays a chart out on a surface. */
public final class ChartLayout {
  private final Chart chart;
  private final Surface surface;
  private final List<ChartMark> marks = new ArrayList<>();
  private final ChartRoom room;
  private final double left;
  private final double right;
  private final double top;
  private final double bottom;
  private final Labels labels;

  private ChartLayout(Chart chart, Surface surface) {
    this.chart = chart;
    this.surface = surface;
    this.room = new ChartRoom(chart, surface);
    this.left = room.left();
    this.right = room.right();
    this.top = room.top();
    this.bottom = room.bottom();
    double letter = surface.capital();
    this.labels = new Labels(letter, left, top - letter, right, bottom);
    obstacles();
  }

  /** All that no words may lie on. */
  private void obstacles() {
    chart.levels().forEach(at -> labels.line(left, y(at.up()), right, y(at.up())));
    for (Chart.Trace trace : chart.traces()) {
      List<Chart.Point> points = trace.points();
      for (int at = 1; at < points.size(); at++) {
        Chart.Point from = points.get(at - 1);
        Chart.Point to = points.get(at);
        labels.line(x(from.across()), y(from.up()), x(to.across()), y(to.up()));
      }
    }
    for (Chart.Column column : chart.columns()) {
      double x = x(column.place());
      if (column.value().isPresent()) {
        labels.line(x, y(column.low()), x, y(column.high()));
      }
      double half = room.half();
      column.limits().forEach(limit -> labels.line(x - half, y(limit), x + half, y(limit)));
    }
  }

  /** The marks in the order in which they are drawn. */
  public static List<ChartMark> of(Chart chart, Surface surface) {
    ChartLayout drawing = new ChartLayout(chart, surface);
    drawing.bands();
    drawing.frame();
    drawing.figuresUp();
    drawing.figuresAcross();
    drawing.levels();
    drawing.traces();
    chart.columns().forEach(drawing::column);
    return List.copyOf(drawing.marks);
  }

  private double x(double across) {
    return room.x(across);
  }

  private double y(double up) {
    return room.y(up);
  }

  private void line(double x1, double y1, double x2, double y2, Look look) {
    marks.add(new ChartMark.Line(x1, y1, x2, y2, look));
  }

  private void words(double x, double y, Side side, String text) {
    marks.add(new ChartMark.Words(x, y, side, text));
  }

  private void frame() {
    upright();
    line(left, bottom, right, bottom, Look.THIN);
    words(0, 0.8 * surface.capital(), Side.BEGIN, chart.up().words());
    if (room.low()) {
      besides().findFirst().ifPresent(this::beside);
    } else {
      double low = surface.height() - 0.8 * surface.capital();
      words((left + right) / 2, low, Side.MIDDLE, chart.across().words());
    }
  }

  /** What the axis across is, as far as it has room in the row above the plot. */
  private Stream<String> besides() {
    String text = chart.across().words();
    return Stream.of(text, text.split(";", -1)[0]).filter(room::isBeside);
  }

  private void beside(String words) {
    if (!words.isEmpty()) {
      words(right, 0.8 * surface.capital(), Side.END, words);
    }
  }

  /** The axis up; where it is broken two strokes stand across it, and nothing between them. */
  private void upright() {
    if (chart.up().gap().isEmpty()) {
      line(left, top, left, bottom, Look.THIN);
      return;
    }
    Axis.Gap gap = chart.up().gap().get();
    double arm = 0.6 * surface.capital();
    line(left, top, left, y(gap.to()), Look.THIN);
    line(left, y(gap.from()), left, bottom, Look.THIN);
    for (double end : new double[] {gap.from(), gap.to()}) {
      line(left - arm, y(end) + arm / 2, left + arm, y(end) - arm / 2, Look.THIN);
    }
  }

  private void figuresUp() {
    double letter = surface.capital();
    double last = Double.POSITIVE_INFINITY;
    for (Axis.Tick tick : chart.up().ticks()) {
      double y = y(tick.at());
      line(left - 0.5 * letter, y, left, y, Look.THIN);
      if (last - y >= 1.6 * letter) {
        words(left - 0.8 * letter, y, Side.END, tick.words());
        last = y;
      }
    }
  }

  /** A figure that would touch another is left out; crowded names stand in two rows. */
  private void figuresAcross() {
    double letter = surface.capital();
    NamesAcross names = new NamesAcross(room.nameRows(), letter);
    // What stands out is named first: it must never pass for its neighbor.
    chart.across().ticks().stream().filter(this::isOdd).forEach(tick -> name(names, tick));
    chart.across().ticks().stream().filter(tick -> !isOdd(tick)).forEach(tick -> name(names, tick));
    for (double x : names.leads()) {
      line(x, bottom + 0.5 * letter, x, bottom + (0.5 + ChartRoom.ROW) * letter, Look.THIN);
    }
  }

  private boolean isOdd(Axis.Tick tick) {
    return chart.columns().stream().anyMatch(one -> one.odd() && one.place() == tick.at());
  }

  private void name(NamesAcross names, Axis.Tick tick) {
    double letter = surface.capital();
    double x = x(tick.at());
    double at = middle(tick);
    double half = surface.widthOf(tick.words()) / 2;
    line(x, bottom, x, bottom + 0.5 * letter, Look.THIN);
    names
        .take(chart.across().ticks().indexOf(tick), x, at - half, at + half)
        .ifPresent(
            row ->
                words(
                    at, bottom + (1.5 + ChartRoom.ROW * row) * letter, Side.MIDDLE, tick.words()));
  }

  /** Where the middle of a name lies: below its tick, as far as it does not leave the surface. */
  private double middle(Axis.Tick tick) {
    double half = surface.widthOf(tick.words()) / 2;
    return Math.max(half, Math.min(x(tick.at()), surface.width() - half));
  }

  private void levels() {
    double letter = surface.capital();
    for (Chart.Level level : chart.levels()) {
      double y = y(level.up());
      line(left, y, right, y, Look.DOTTED);
      if (!level.words().isEmpty()) {
        List<Labels.Spot> spots = new ArrayList<>();
        for (double down : new double[] {-letter, letter}) {
          spots.add(new Labels.Spot(right, y + down, Side.END));
          spots.add(new Labels.Spot(left + 0.6 * letter, y + down, Side.BEGIN));
          for (double part = 0.1; part < 0.95; part += 0.05) {
            spots.add(new Labels.Spot(left + part * (right - left), y + down, Side.BEGIN));
          }
        }
        place(spots, level.words());
      }
    }
  }

  /** Words at the first of some places that is free; none where all would lie on a line. */
  private void place(List<Labels.Spot> spots, String text) {
    labels
        .take(spots, surface.widthOf(text))
        .ifPresent(spot -> words(spot.x(), spot.y(), spot.side(), text));
  }

  private void bands() {
    for (Chart.Level level : chart.levels()) {
      if (level.high() > level.low()) {
        marks.add(
            new ChartMark.Area(
                List.of(
                    new ChartMark.Corner(left, y(level.high())),
                    new ChartMark.Corner(right, y(level.high())),
                    new ChartMark.Corner(right, y(level.low())),
                    new ChartMark.Corner(left, y(level.low())))));
      }
    }
    for (Chart.Trace trace : chart.traces()) {
      List<ChartMark.Corner> corners = new ArrayList<>();
      for (Chart.Point point : trace.points()) {
        corners.add(new ChartMark.Corner(x(point.across()), y(point.high())));
      }
      for (int at = trace.points().size() - 1; at >= 0; at--) {
        Chart.Point point = trace.points().get(at);
        corners.add(new ChartMark.Corner(x(point.across()), y(point.low())));
      }
      marks.add(new ChartMark.Area(corners));
    }
  }

  private void traces() {
    for (int which = 0; which < chart.traces().size(); which++) {
      Chart.Trace trace = chart.traces().get(which);
      Look look = which == 0 ? Look.THICK : Look.DASHED;
      List<Chart.Point> points = trace.points();
      for (int at = 1; at < points.size(); at++) {
        Chart.Point from = points.get(at - 1);
        Chart.Point to = points.get(at);
        line(x(from.across()), y(from.up()), x(to.across()), y(to.up()), look);
      }
      if (chart.traces().size() > 1) {
        name(trace, which == 0 ? -1.2 : 1.2);
      }
    }
  }

  /** Beside its curve, as near to where it begins as there is room; one alone the axis names. */
  private void name(Chart.Trace trace, double side) {
    double letter = surface.capital();
    List<Labels.Spot> spots = new ArrayList<>();
    for (double away : new double[] {side, -side, 2 * side, -2 * side, 3 * side, -3 * side}) {
      for (double part : new double[] {0, 0.25, 0.5, 0.75, 0.95}) {
        int at = (int) Math.round(part * (trace.points().size() - 1));
        Chart.Point point = trace.points().get(at);
        double x = x(point.across());
        double y = y(point.up()) + away * letter;
        spots.add(new Labels.Spot(x + 0.6 * letter, y, Side.BEGIN));
        spots.add(new Labels.Spot(x - 0.6 * letter, y, Side.END));
      }
    }
    place(spots, trace.name());
  }

  private void column(Chart.Column column) {
    double letter = surface.capital();
    double x = x(column.place());
    double half = room.half();
    for (double limit : column.limits()) {
      line(x - half, y(limit), x + half, y(limit), Look.THICK);
    }
    if (column.value().isPresent()) {
      double arm = Math.min(letter, 0.3 * half);
      line(x, y(column.low()), x, y(column.high()), Look.THIN);
      line(x - arm, y(column.low()), x + arm, y(column.low()), Look.THIN);
      line(x - arm, y(column.high()), x + arm, y(column.high()), Look.THIN);
      marks.add(new ChartMark.Dot(x, y(column.value().getAsDouble()), column.odd()));
    }
    if (room.verdicts() && !column.verdict().isEmpty()) {
      words(
          x,
          bottom + (1.5 + ChartRoom.ROW * room.nameRows()) * letter,
          Side.MIDDLE,
          column.verdict());
    }
  }
}
