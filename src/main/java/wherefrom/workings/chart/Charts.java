package wherefrom.workings.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import wherefrom.quantity.Unit;
import wherefrom.workings.catalogue.accept.Acceptance;
import wherefrom.workings.plan.ClearancePlot;
import wherefrom.workings.plan.LiftPlot;
import wherefrom.workings.plan.Margin;
import wherefrom.workings.plan.Plot;

/** Plots as charts. */
public final class Charts {
  private static final int FEW = 3;

  /** How far beside the middle of its column a value stands at most, as a part of the column. */
  private static final double ASIDE = 0.14;

  /** The same as a part of the whole width. */
  private static final double ASIDE_OF_ALL = 0.035;

  private Charts() {}

  /** The same chart under another title. */
  public static Chart named(String title, Chart chart) {
    return new Chart(
        title, chart.across(), chart.up(), chart.traces(), chart.levels(), chart.columns());
  }

  /** The same chart with one point marked by a dot. */
  public static Chart marked(Chart chart, Chart.Column point) {
    List<Chart.Column> columns = new ArrayList<>(chart.columns());
    columns.add(point);
    return new Chart(
        chart.title(), chart.across(), chart.up(), chart.traces(), chart.levels(), columns);
  }

  /** Curves against a size, or against a few named levels. */
  public static Chart of(Plot plot) {
    List<Chart.Trace> traces =
        plot.curves().stream()
            .map(curve -> new Chart.Trace(curve.name(), points(curve.points())))
            .toList();
    List<Chart.Level> levels =
        plot.lines().stream().map(line -> Chart.Level.exact(line.words(), line.up())).toList();
    double[] ups =
        DoubleStream.concat(
                traces.stream()
                    .flatMap(trace -> trace.points().stream())
                    .flatMapToDouble(point -> DoubleStream.of(point.low(), point.high())),
                levels.stream().mapToDouble(Chart.Level::up))
            .toArray();
    return new Chart(
        plot.title(),
        across(plot),
        axis(plot.upWords(), plot.upUnit(), ups),
        traces,
        levels,
        List.of());
  }

  private static List<Chart.Point> points(List<Plot.Point> points) {
    return points.stream()
        .map(point -> new Chart.Point(point.across(), point.up(), point.low(), point.high()))
        .toList();
  }

  private static Axis across(Plot plot) {
    double[] values =
        plot.curves().stream()
            .flatMap(curve -> curve.points().stream())
            .mapToDouble(Plot.Point::across)
            .toArray();
    if (plot.acrossUnit() == Unit.PIECES && values.length <= 2 * FEW) {
      List<String> names = IntStream.rangeClosed(1, FEW).mapToObj(String::valueOf).toList();
      return Axis.ofNames(plot.acrossWords(), names);
    }
    return axis(plot.acrossWords(), plot.acrossUnit(), values);
  }

  private static Axis axis(String words, Unit unit, double... values) {
    double least = DoubleStream.of(values).min().orElse(0);
    double most = DoubleStream.of(values).max().orElse(1);
    return Axis.covering(named(words, unit), least, most);
  }

  private static String named(String words, Unit unit) {
    return unit.symbol().isEmpty() ? words : words + ", " + unit.symbol();
  }

  /** The lift as a level; where each limit touches, and the lift that keeps the usual margin. */
  public static Chart of(LiftPlot plot) {
    List<Chart.Column> columns = new ArrayList<>();
    List<String> names = new ArrayList<>();
    double low = plot.lift() - plot.band();
    double high = plot.lift() + plot.band();
    List<Double> ups = new ArrayList<>(List.of(low, high));
    for (LiftPlot.Bar bar : plot.bars()) {
      names.add(bar.limit().words());
      columns.add(
          Chart.Column.ofValue(
                  names.size(), bar.stop(), bar.stop() - bar.band(), bar.stop() + bar.band())
              .with(List.of(bar.usualMost()), words(bar.margin().standing()), false));
      ups.addAll(List.of(bar.stop() + bar.band(), bar.stop() - bar.band(), bar.usualMost()));
    }
    return new Chart(
        "Valve lift against its limits",
        Axis.ofNames("dot: touches; thick: usual margin", names),
        axis("valve lift", plot.unit(), array(ups)),
        List.of(),
        List.of(new Chart.Level("valve lift", plot.lift(), low, high)),
        columns);
  }

  private static String words(Margin.Standing standing) {
    return switch (standing) {
      case CLEAR -> "clear";
      case UNDECIDED -> "undecided";
      case NOT_KNOWN -> "not known";
      case UNDER -> "below usual minimum";
      case TOUCHES -> "touches";
    };
  }

  private static double[] array(List<Double> ups) {
    return ups.stream().mapToDouble(up -> up).toArray();
  }

  /** Each journal's least and most clearance with their bands between its limits. */
  public static Chart of(ClearancePlot plot) {
    List<Chart.Column> columns = new ArrayList<>();
    List<String> names = new ArrayList<>();
    List<Double> ups = new ArrayList<>(List.of(0.0));
    double aside = Math.min(ASIDE, ASIDE_OF_ALL * plot.bars().size());
    for (ClearancePlot.Bar bar : plot.bars()) {
      names.add(bar.journal());
      List<Double> limits =
          DoubleStream.concat(bar.lowerLimit().stream(), bar.upperLimit().stream())
              .boxed()
              .toList();
      columns.add(
          Chart.Column.ofLimits(
              names.size(),
              limits,
              bar.decision()
                  .map(Charts::words)
                  .orElse(limits.isEmpty() ? "no limit" : "no source")));
      columns.add(column(names.size() - aside, bar.smallest()));
      columns.add(column(names.size() + aside, bar.largest()));
      ups.addAll(List.of(bar.smallest().low(), bar.largest().high()));
      ups.addAll(limits);
    }
    return new Chart(
        "Oil clearance of each journal",
        Axis.ofNames("dots: min, max; thick: limits", names),
        axis("clearance", plot.unit(), array(ups)),
        List.of(),
        List.of(),
        columns);
  }

  private static Chart.Column column(double place, ClearancePlot.Reach reach) {
    return Chart.Column.ofValue(place, reach.value(), reach.low(), reach.high());
  }

  /** As the sentence beside the plot explains them: within the limits, outside, cannot be said. */
  private static String words(Acceptance.Ruling decision) {
    return switch (decision) {
      case ACCEPT -> "in";
      case UNDECIDED -> "?";
      case REJECT -> "out";
    };
  }

  /** An axis for what is measured and for zero; broken where a few lie far off. */
  private static Axis ofSpans(String up, List<Chart.Column> columns) {
    List<FarOff.Span> spans = new ArrayList<>(List.of(new FarOff.Span(0, 0)));
    columns.forEach(each -> spans.add(new FarOff.Span(each.low(), each.high())));
    double least = spans.stream().mapToDouble(FarOff.Span::low).min().orElse(0);
    double most = spans.stream().mapToDouble(FarOff.Span::high).max().orElse(0);
    return FarOff.find(spans)
        .map(gap -> Axis.broken(up, least, most, gap))
        .orElseGet(() -> Axis.covering(up, least, most));
  }

  /**
   * A set held against itself or against a line.
   *
   * @param up what is measured upwards, with its unit
   */
  public static Chart ofSet(
      String title, String up, List<String> names, List<Chart.Column> columns) {
    return new Chart(
        title,
        Axis.ofNames("square: odd one", names),
        ofSpans(up, columns),
        List.of(),
        List.of(Chart.Level.exact("", 0)),
        columns);
  }
}
