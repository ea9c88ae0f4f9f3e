package wherefrom.job.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.inspection.measure.ClearancePair;
import wherefrom.inspection.measure.Judgement;
import wherefrom.inspection.measure.Limit;
import wherefrom.job.BearingClearance;
import wherefrom.job.ClearanceRange;
import wherefrom.job.OilClearances;
import wherefrom.job.OpenJob;
import wherefrom.job.PairClearance;
import wherefrom.job.PairClearances;
import wherefrom.job.pages.RecordPlot;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.chart.Charts;
import wherefrom.workings.plan.ClearancePlot;

/** The oil clearance of mains and rods, each with its least and its most, beside the limits. */
final class ClearanceCharts {
  private static final String VERDICTS =
      ". in: within them; out: outside; ?: the readings cannot say (ISO 14253-1). "
          + JobCharts.BAND;

  private final OpenJob job;
  private final Unit unit;

  ClearanceCharts(OpenJob job) {
    this.job = job;
    this.unit = job.state().units().unit(Dimension.LENGTH);
  }

  /** One for the mains, one for the rods; without those of which no journal is measured. */
  List<RecordPlot> list() {
    List<RecordPlot> plots = new ArrayList<>();
    for (Bearings bearings : Bearings.values()) {
      plot(bearings).ifPresent(plots::add);
    }
    PairClearances clearances = new PairClearances(job.state());
    for (ClearancePair pair : clearances.pairs()) {
      plot(pair, clearances.list(pair)).ifPresent(plots::add);
    }
    return plots;
  }

  private Optional<RecordPlot> plot(ClearancePair pair, List<PairClearance> found) {
    Optional<Limit> limit = job.state().measures().findLimit(pair.key(), ClearancePair.CLEARANCE);
    List<ClearancePlot.Reading> readings = new ArrayList<>();
    for (PairClearance one : found) {
      one.range().map(range -> reading(one, range, limit)).ifPresent(readings::add);
    }
    return readings.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new RecordPlot(
                Charts.named(
                    pair.title() + " clearance", Charts.of(ClearancePlot.of(unit, readings))),
                "Each dot is the least or the most of facing readings. Limits: "
                    + limit.map(one -> one.words() + " (" + one.source() + ")").orElse("none typed")
                    + VERDICTS,
                "clearance:" + pair.key()));
  }

  private static ClearancePlot.Reading reading(
      PairClearance found, ClearanceRange range, Optional<Limit> limit) {
    Unit unit = range.smallest().unit();
    return new ClearancePlot.Reading(
        Spots.find(found.where()).map(Spot::figures).orElse(found.where()),
        range.smallest(),
        range.largest(),
        in(limit.flatMap(Limit::lower), unit),
        in(limit.flatMap(Limit::upper), unit),
        found.judgement().map(Judgement::decision));
  }

  private Optional<RecordPlot> plot(Bearings bearings) {
    ClearanceLimits limits = ClearanceLimits.of(job, bearings);
    List<ClearancePlot.Reading> readings = new ArrayList<>();
    for (BearingClearance found : new OilClearances(job.state()).list()) {
      if (found.journal().feature() == bearings.journal()) {
        found.range().map(range -> reading(found, range, limits)).ifPresent(readings::add);
      }
    }
    return readings.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new RecordPlot(
                Charts.named(
                    "Oil clearance of the " + bearings.id() + " bearings",
                    Charts.of(ClearancePlot.of(unit, readings))),
                words(limits),
                "clearance:" + bearings.id()));
  }

  private static ClearancePlot.Reading reading(
      BearingClearance found, ClearanceRange range, ClearanceLimits limits) {
    Unit unit = range.smallest().unit();
    return new ClearancePlot.Reading(
        found.words(),
        range.smallest(),
        range.largest(),
        in(limits.lower(), unit),
        in(limits.upper(), unit),
        found.judgement().map(Judgement::decision));
  }

  private static OptionalDouble in(Optional<Amount> limit, Unit unit) {
    return limit.isPresent() ? OptionalDouble.of(limit.get().in(unit)) : OptionalDouble.empty();
  }

  private static String words(ClearanceLimits limits) {
    return "Each dot is the smallest or the largest measured on the journal. It is under"
        + " the crown of the shells. Limits: "
        + limits.words()
        + VERDICTS;
  }
}
