package wherefrom.job.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OpenJob;
import wherefrom.job.pages.RecordPlot;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.Inputs;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.chart.Chart;
import wherefrom.workings.chart.Charts;
import wherefrom.workings.plan.BoreShapePlot;
import wherefrom.workings.plan.LiftPlot;
import wherefrom.workings.plan.PlanAnswer;
import wherefrom.workings.plan.PlanColumn;
import wherefrom.workings.plan.Plot;
import wherefrom.workings.plan.RatioPlot;

/** Every plot that the job's figures and readings allow. */
public final class JobCharts {
  /** What every plot says of its bands. */
  static final String BAND = "Bands are ±2·u.";

  private static final int STEPS = 30;

  private final EngineJob state;
  private final PlanBook book;
  private final Unit unit;

  private JobCharts(OpenJob job) {
    this.state = job.state();
    this.book = new PlanBook(job);
    this.unit = state.units().unit(Dimension.LENGTH);
  }

  /**
   * The plots of a column of the plan, then those of what was measured.
   *
   * @param column as in {@link PlanBook}
   */
  public static List<RecordPlot> of(OpenJob job, int column) {
    List<RecordPlot> all = new ArrayList<>(ofPlan(job, column));
    all.addAll(ofMeasured(job));
    return all;
  }

  /** The ratio against the cut, and the lift against its limits. */
  public static List<RecordPlot> ofPlan(OpenJob job, int column) {
    JobCharts charts = new JobCharts(job);
    return Stream.of(charts.ratio(column), charts.lift(column)).flatMap(Optional::stream).toList();
  }

  /** Clearances, bores and sets. */
  public static List<RecordPlot> ofMeasured(OpenJob job) {
    List<RecordPlot> all = new ArrayList<>(new ClearanceCharts(job).list());
    all.addAll(new JobCharts(job).bores());
    all.addAll(new SetCharts(job).list());
    return all;
  }

  private Optional<PlanColumn> worked(int column) {
    int at = book.columns().indexOf(column);
    List<PlanAnswer> answers = book.work();
    return at >= 0 && answers.get(at) instanceof PlanColumn worked
        ? Optional.of(worked)
        : Optional.empty();
  }

  /** From no cut to one and a half times that of the column, but at least 1.5 mm. */
  private Optional<RecordPlot> ratio(int column) {
    Optional<Result> result = worked(column).map(PlanColumn::result);
    Optional<ResultValue> cut = result.flatMap(worked -> worked.findValue("head-cut"));
    double reached = cut.map(value -> value.amount().in(Unit.MILLIMETRE)).orElse(0.0);
    Amount deepest = Amount.of(Math.max(1.5, 1.5 * reached), Unit.MILLIMETRE).to(unit);
    Inputs inputs = book.all(column);
    if (inputs.find("opening").isEmpty()) {
      return Optional.empty();
    }
    Optional<ResultValue> ratio = result.flatMap(worked -> worked.findValue("ratio"));
    Optional<Chart> chart = RatioPlot.of(inputs, deepest, STEPS).map(Charts::of);
    return chart.map(
        curve ->
            ratio
                .map(
                    at ->
                        new RecordPlot(
                            Charts.marked(
                                curve, point(Amount.of(reached, Unit.MILLIMETRE).in(unit), at)),
                            "Dot: the ratio " + at.text() + cutWords(cut) + ". " + BAND))
                .orElseGet(() -> new RecordPlot(curve, BAND)));
  }

  private static String cutWords(Optional<ResultValue> cut) {
    return cut.filter(value -> value.value() != 0)
        .map(value -> " after a cut of " + value.text())
        .orElse(" with no cut");
  }

  private static Chart.Column point(double cut, ResultValue ratio) {
    double band = Plot.COVERAGE * ratio.standardUncertainty();
    return Chart.Column.ofValue(cut, ratio.value(), ratio.value() - band, ratio.value() + band);
  }

  private Optional<RecordPlot> lift(int column) {
    return worked(column)
        .flatMap(LiftPlot::of)
        .filter(plot -> !plot.bars().isEmpty())
        .map(plot -> new RecordPlot(Charts.of(plot), words(plot)));
  }

  private static String words(LiftPlot plot) {
    return plot.bars().stream()
            .map(bar -> bar.margin().sentence())
            .collect(Collectors.joining("; "))
        + ". "
        + BAND;
  }

  private List<RecordPlot> bores() {
    List<RecordPlot> charts = new ArrayList<>();
    Optional<Amount> nominal = state.measures().findSize("bore");
    for (MeasuredResult result : state.measures().listResults("bore")) {
      nominal.flatMap(size -> bore(result, size)).ifPresent(charts::add);
    }
    return charts;
  }

  private Optional<RecordPlot> bore(MeasuredResult result, Amount nominal) {
    Inputs inputs = Inputs.empty().with("nominal", nominal);
    for (var sample : result.samples()) {
      inputs = inputs.with(sample.station().key(), sample.measured(result.tool()));
    }
    String title = "Shape of " + ((Subject.AFeature) result.subject()).words();
    String shape =
        result.values().stream()
            .map(value -> value.words() + " " + value.text())
            .collect(Collectors.joining("; "));
    return BoreShapePlot.of(inputs, unit)
        .map(
            plot ->
                new RecordPlot(
                    Charts.named(title, Charts.of(plot)),
                    shape + ". " + BAND,
                    result.subject().key()));
  }
}
