package wherefrom.workings.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;
import wherefrom.workings.InputText;
import wherefrom.workings.Inputs;
import wherefrom.workings.InputsReading;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Working;
import wherefrom.workings.catalogue.Workings;
import wherefrom.workings.catalogue.accept.Acceptance;
import wherefrom.workings.chart.Chart;
import wherefrom.workings.chart.Charts;

class PlotTest {
  private static Inputs inputs(Working working, String... texts) {
    return ((InputsReading.Understood) InputText.read(working, List.of(texts))).inputs();
  }

  private static Measured measured(String text) {
    return inputs(new PlanWorking(), "lobe-lift=" + text).findMeasured("lobe-lift").orElseThrow();
  }

  private static final Inputs COLUMN =
      inputs(
          new PlanWorking(),
          "bore=3.87in",
          "stroke=3.31in",
          "chamber=63cc±0.5cc",
          "gasket-bore=3.97in",
          "gasket-thickness=0.04in",
          "deck=0.025in",
          "piston-volume=6cc",
          "opening=0.165cc/thou±0.005",
          "target=9.5",
          "lobe-lift=0.300in±0.001in",
          "rocker-ratio=1.5",
          "lash=0in",
          "installed-height=1.7in",
          "solid-height=1.15in",
          "seal-gap=0.52in");

  @Test
  void ratioRisesWithTheCutAndPassesTheTargetWhereTheCutSays() {
    Plot plot = RatioPlot.of(COLUMN, Amount.of("0.080", Unit.INCH), 40).orElseThrow();
    List<Plot.Point> points = plot.curves().get(0).points();
    assertThat(points).hasSize(41);
    assertThat(points.get(0).up()).isCloseTo(8.7872, within(0.00005));
    assertThat(points.get(0).high() - points.get(0).up())
        .isCloseTo(2 * 0.5 * 0.0950, within(0.0005));
    for (int i = 1; i < points.size(); i++) {
      assertThat(points.get(i).up()).isGreaterThan(points.get(i - 1).up());
      assertThat(points.get(i).high() - points.get(i).low())
          .isGreaterThan(points.get(i - 1).high() - points.get(i - 1).low());
    }
    assertThat(plot.lines()).containsExactly(new Plot.Level("wanted", 9.5));
    assertThat(points.get(20).up()).isLessThan(9.5);
    assertThat(points.get(21).up()).isGreaterThan(9.5);
  }

  @Test
  void cutsThatLeaveNoChamberAreLeftOut() {
    Plot plot = RatioPlot.of(COLUMN, Amount.of("1", Unit.INCH), 100).orElseThrow();
    assertThat(plot.curves().get(0).points()).hasSize(39);
    assertThat(RatioPlot.of(COLUMN.without("bore"), Amount.of("1", Unit.INCH), 10)).isEmpty();
  }

  @Test
  void liftStandsBesideItsLimits() {
    PlanColumn column = (PlanColumn) new WhatIfPlan(COLUMN, List.of()).work().get(0);
    LiftPlot plot = LiftPlot.of(column).orElseThrow();
    assertThat(plot.lift()).isCloseTo(0.450, within(1e-12));
    assertThat(plot.bars())
        .extracting(LiftPlot.Bar::limit)
        .containsExactly(LiftLimit.COIL_BIND, LiftLimit.SEAL);
    LiftPlot.Bar bind = plot.bars().get(0);
    assertThat(bind.stop()).isCloseTo(0.550, within(1e-12));
    assertThat(bind.usualMost()).isCloseTo(0.490, within(1e-12));
    assertThat(plot.band()).isCloseTo(2 * 0.0015, within(1e-9));
    assertThat(bind.band()).isCloseTo(0, within(1e-9));
  }

  @Test
  void theLiftHasItsOwnBandAndTheStopsHaveWhatIsLeftOfTheGaps() {
    Inputs measured =
        COLUMN
            .with("installed-height", measured("1.700 in±0.010 in"))
            .with("lobe-lift", measured("0.300 in±0.004 in"));
    PlanColumn column = (PlanColumn) new WhatIfPlan(measured, List.of()).work().get(0);
    LiftPlot plot = LiftPlot.of(column).orElseThrow();
    assertThat(plot.band()).isCloseTo(2 * 0.006, within(1e-9));
    LiftPlot.Bar bind = plot.bars().get(0);
    assertThat(bind.band()).isCloseTo(2 * 0.010, within(1e-9));
    assertThat(bind.margin().result().standardUncertainty())
        .isCloseTo(Math.hypot(0.010, 0.006), within(1e-9));
    Chart chart = Charts.of(plot);
    assertThat(chart.levels().get(0).high()).isCloseTo(0.462, within(1e-9));
    assertThat(chart.levels().get(0).low()).isCloseTo(0.438, within(1e-9));
  }

  @Test
  void aGapOverItsUsualLeastByLessThanItsBandIsUndecided() {
    Inputs near = COLUMN.with("installed-height", measured("1.665 in±0.010 in"));
    PlanColumn column = (PlanColumn) new WhatIfPlan(near, List.of()).work().get(0);
    Chart chart = Charts.of(LiftPlot.of(column).orElseThrow());
    assertThat(chart.columns().get(0).verdict()).isEqualTo("undecided");
    assertThat(chart.columns().get(1).verdict()).isEqualTo("clear");
  }

  private static ClearancePlot.Bar bar(double smallest, double largest) {
    ClearancePlot plot =
        ClearancePlot.of(
            Unit.MILLIMETRE,
            List.of(
                new ClearancePlot.Reading(
                    "main 1",
                    clearance(smallest),
                    clearance(largest),
                    OptionalDouble.of(0.0010),
                    OptionalDouble.of(0.0025),
                    Optional.of(Acceptance.Ruling.UNDECIDED))));
    return plot.bars().get(0);
  }

  private static ResultValue clearance(double value) {
    return new ResultValue("clearance", "oil clearance", Unit.INCH, value, 0.000131, List.of());
  }

  @Test
  void clearancesStandAgainstTheirLimitsInOneUnit() {
    ClearancePlot.Bar bar = bar(0.0018, 0.0023);
    assertThat(bar.smallest().value()).isCloseTo(0.04572, within(1e-9));
    assertThat(bar.largest().value()).isCloseTo(0.05842, within(1e-9));
    assertThat(bar.largest().high() - bar.largest().low())
        .isCloseTo(4 * 0.000131 * 25.4, within(1e-9));
    assertThat(bar.upperLimit().orElseThrow()).isCloseTo(0.0635, within(1e-9));
    assertThat(bar.decision()).contains(Acceptance.Ruling.UNDECIDED);
  }

  @Test
  void boreShapeShowsWhatIsOverNominal() {
    Inputs bore =
        inputs(
            Workings.find("bore-shape").orElseThrow(),
            "thrust-top=3.8752in±0.0001in",
            "thrust-middle=3.8738in",
            "thrust-bottom=3.8712in",
            "axial-top=3.8730in",
            "axial-middle=3.8724in",
            "axial-bottom=3.8710in",
            "nominal=3.870in");
    Plot plot = BoreShapePlot.of(bore, Unit.THOU).orElseThrow();
    assertThat(plot.curves()).hasSize(2);
    assertThat(plot.curves().get(0).points().get(0))
        .isEqualTo(new Plot.Point(1, 5.2, 5.2 - 0.2, 5.2 + 0.2));
    assertThat(plot.curves().get(1).points().get(2).up()).isEqualTo(1.0);
    assertThat(BoreShapePlot.of(bore.without("axial-top"), Unit.THOU)).isEmpty();
  }
}
