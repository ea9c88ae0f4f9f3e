package wherefrom.workings.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import wherefrom.quantity.Unit;
import wherefrom.workings.plan.ClearancePlot;
import wherefrom.workings.plan.LiftPlot;
import wherefrom.workings.plan.Plot;

/** Plots as charts. */
public final class Charts {
  private static final int FEW = 3;

  private Charts() {}

  /** The same chart under another title. */
  public static Chart named(String title, Chart chart) {
    return new Chart(
        title, chart.across(), chart.up(), chart.traces(), chart.levels(), chart.columns());
  }

  /** Curves against a size, or against a few named levels. */
  public static Chart of(Plot plot) {
    List<Chart.Trace> traces =
        plot.curves().stream()
            .map(curve -> new Chart.Trace(curve.name(), points(curve.points())))
            .toList();
    List<Chart.Level> levels =
        plot.lines().stream().map(line -> new Chart.Level(line.words(), line.up())).toList();
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
    List<Double> ups = new ArrayList<>(List.of(0.0, plot.lift()));
    for (LiftPlot.Bar bar : plot.bars()) {
      names.add(bar.limit().words());
      String verdict = plot.lift() > bar.usualMost() ? "under usual least" : "clear";
      columns.add(
          new Chart.Column(
              names.size(),
              OptionalDouble.of(bar.stop()),
              bar.stop() - bar.band(),
              bar.stop() + bar.band(),
              List.of(new Chart.Level("", bar.usualMost())),
              verdict));
      ups.addAll(List.of(bar.stop() + bar.band(), bar.usualMost()));
    }
    return new Chart(
        "Valve lift against its limits",
        Axis.ofNames("dot: touches; thick mark: usual margin kept", names),
        axis("valve lift", plot.unit(), ups.stream().mapToDouble(up -> up).toArray()),
        List.of(),
        List.of(new Chart.Level("valve lift", plot.lift())),
        columns);
  }

  /** Each journal's clearance with its band between its limits. */
  public static Chart of(ClearancePlot plot) {
    List<Chart.Column> columns = new ArrayList<>();
    List<String> names = new ArrayList<>();
    List<Double> ups = new ArrayList<>(List.of(0.0));
    for (ClearancePlot.Bar bar : plot.bars()) {
      names.add(bar.journal());
      List<Chart.Level> limits = new ArrayList<>();
      bar.lowerLimit().ifPresent(limit -> limits.add(new Chart.Level("", limit)));
      bar.upperLimit().ifPresent(limit -> limits.add(new Chart.Level("", limit)));
      boolean limited = !limits.isEmpty();
      columns.add(
          new Chart.Column(
              names.size(),
              OptionalDouble.of(bar.clearance()),
              bar.low(),
              bar.high(),
              limits,
              limited ? verdict(bar) : "no limit"));
      ups.addAll(List.of(bar.low(), bar.high()));
      limits.forEach(limit -> ups.add(limit.up()));
    }
    return new Chart(
        "Oil clearance of each journal",
        Axis.ofNames("dot: measured; thick marks: limits", names),
        axis("clearance", plot.unit(), ups.stream().mapToDouble(up -> up).toArray()),
        List.of(),
        List.of(),
        columns);
  }

  private static String verdict(ClearancePlot.Bar bar) {
    return switch (bar.decision()) {
      case ACCEPT -> "yes";
      case UNDECIDED -> "?";
      case REJECT -> "no";
    };
  }
}
