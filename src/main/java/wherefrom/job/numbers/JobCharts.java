package wherefrom.job.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OpenJob;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;
import wherefrom.workings.Inputs;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.OilClearance;
import wherefrom.workings.chart.Chart;
import wherefrom.workings.chart.Charts;
import wherefrom.workings.plan.BoreShapePlot;
import wherefrom.workings.plan.ClearancePlot;
import wherefrom.workings.plan.LiftPlot;
import wherefrom.workings.plan.PlanAnswer;
import wherefrom.workings.plan.PlanColumn;
import wherefrom.workings.plan.RatioPlot;

/** Every plot that the job's figures and readings allow. */
public final class JobCharts {
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
  public static List<Chart> of(OpenJob job, int column) {
    JobCharts charts = new JobCharts(job);
    List<Chart> all = new ArrayList<>();
    charts.ratio(column).ifPresent(all::add);
    charts.lift(column).ifPresent(all::add);
    charts.clearance(Feature.MAIN_JOURNAL).ifPresent(all::add);
    charts.clearance(Feature.ROD_JOURNAL).ifPresent(all::add);
    all.addAll(charts.bores());
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
  private Optional<Chart> ratio(int column) {
    double cut =
        worked(column)
            .flatMap(worked -> worked.result().findValue("head-cut"))
            .map(value -> value.amount().in(Unit.MILLIMETRE))
            .orElse(0.0);
    Amount deepest = Amount.of(Math.max(1.5, 1.5 * cut), Unit.MILLIMETRE).to(unit);
    Inputs inputs = book.all(column);
    return inputs.find("opening").isEmpty()
        ? Optional.empty()
        : RatioPlot.of(inputs, deepest, STEPS).map(Charts::of);
  }

  private Optional<Chart> lift(int column) {
    return worked(column)
        .flatMap(LiftPlot::of)
        .filter(plot -> !plot.bars().isEmpty())
        .map(Charts::of);
  }

  private Optional<Chart> clearance(Feature journal) {
    List<ClearancePlot.Reading> readings = new ArrayList<>();
    for (String where : journal.where(state.layout())) {
      clearance(journal, where).ifPresent(readings::add);
    }
    return readings.isEmpty()
        ? Optional.empty()
        : Optional.of(Charts.of(ClearancePlot.of(unit, readings)));
  }

  private Optional<ClearancePlot.Reading> clearance(Feature journal, String where) {
    boolean main = journal == Feature.MAIN_JOURNAL;
    String kind = main ? "main" : "rod";
    Feature housing = main ? Feature.MAIN_HOUSING : Feature.ROD_HOUSING;
    Optional<Measured> bore = size(new Subject.AFeature(housing, where), kind + "-housing", "mean");
    Optional<Measured> pin =
        size(new Subject.AFeature(journal, where), kind + "-journal", "smallest");
    String spot = (main ? "M" : "R") + where.substring(1);
    Optional<Measured> upper = wall(kind, spot + "U");
    Optional<Measured> lower = wall(kind, spot + "L");
    if (bore.isEmpty() || pin.isEmpty() || upper.isEmpty() || lower.isEmpty()) {
      return Optional.empty();
    }
    Inputs inputs =
        Inputs.empty()
            .with("housing", bore.get())
            .with("upper-wall", upper.get())
            .with("lower-wall", lower.get())
            .with("journal", pin.get());
    return new OilClearance().compute(inputs) instanceof Result result
        ? Optional.of(reading(kind, spot, result.getValue("clearance")))
        : Optional.empty();
  }

  /** The journal counts at its smallest reading: the clearance shown is the largest there. */
  private ClearancePlot.Reading reading(String kind, String where, ResultValue clearance) {
    ClearanceLimits limits = ClearanceLimits.of(book.job(), kind);
    return new ClearancePlot.Reading(
        where, clearance, in(limits.lower(), clearance), in(limits.upper(), clearance));
  }

  private static OptionalDouble in(Optional<Amount> limit, ResultValue clearance) {
    return limit.isPresent()
        ? OptionalDouble.of(limit.get().in(clearance.unit()))
        : OptionalDouble.empty();
  }

  private Optional<Measured> wall(String kind, String spot) {
    Optional<Part> shell =
        Place.find(kind + "-shell@" + spot)
            .flatMap(place -> state.findFitted(place).or(() -> state.findOwner(place)));
    return shell.flatMap(part -> size(Subject.ofPart(part.item()), kind + "-shell-wall", "mean"));
  }

  private Optional<Measured> size(Subject subject, String plan, String value) {
    return state
        .measures()
        .findResult(subject, plan)
        .flatMap(result -> result.findValue(value))
        .map(ResultValue::measured);
  }

  private List<Chart> bores() {
    List<Chart> charts = new ArrayList<>();
    for (MeasuredResult result : state.measures().listResults("bore")) {
      Optional<Amount> nominal = state.measures().findSize("bore");
      if (nominal.isPresent()) {
        Inputs inputs = Inputs.empty().with("nominal", nominal.get());
        for (var sample : result.samples()) {
          inputs = inputs.with(sample.station().key(), sample.measured(result.tool()));
        }
        String words = ((Subject.AFeature) result.subject()).words();
        BoreShapePlot.of(inputs, unit)
            .map(Charts::of)
            .map(chart -> Charts.named("Shape of " + words, chart))
            .ifPresent(charts::add);
      }
    }
    return charts;
  }
}
