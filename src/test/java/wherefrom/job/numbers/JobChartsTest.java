package wherefrom.job.numbers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Look;
import wherefrom.job.BearingClearance;
import wherefrom.job.OilClearances;
import wherefrom.job.OpenJob;
import wherefrom.job.measure.Instruments;
import wherefrom.job.numbers.ClearanceLimits.Field;
import wherefrom.job.pages.RecordPlot;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.record.RecordPlots;
import wherefrom.ui.sample.SampleJob;
import wherefrom.workings.catalogue.accept.Acceptance;
import wherefrom.workings.chart.Chart;

class JobChartsTest {
  private static RecordPlot find(List<RecordPlot> plots, String title) {
    return plots.stream().filter(plot -> plot.title().equals(title)).findFirst().orElseThrow();
  }

  private static List<String> titles(List<RecordPlot> plots) {
    return plots.stream().map(RecordPlot::title).toList();
  }

  @Test
  void everythingMeasuredAndPlannedHasItsPlot() {
    assertThat(titles(RecordPlots.of(PlotSample.planned())))
        .containsExactly(
            "Now: Compression ratio against the cut",
            "Now: Valve lift against its limits",
            "Idea 1: Compression ratio against the cut",
            "Oil clearance of the main bearings",
            "Oil clearance of the rod bearings",
            "Shape of cylinder 1, cylinder bore",
            "Straightedge over the stud tops, left bank",
            "Pushrod length: each against the middle of its side");
    assertThat(RecordPlots.of(SampleJob.apart().job)).isEmpty();
  }

  @Test
  void aJournalShowsItsLeastAndItsMostOverEveryPosition() {
    Chart chart =
        find(RecordPlots.of(PlotSample.measured()), "Oil clearance of the main bearings").chart();
    assertThat(chart.across().ticks()).extracting("words").containsExactly("main 1", "main 2");
    List<Double> values =
        chart.columns().stream()
            .filter(column -> column.value().isPresent())
            .map(column -> column.value().getAsDouble())
            .toList();
    // Front: 2.8010 − 2·0.0945 − journal; rear: 2.8010 − 2·0.0946 − journal.
    assertThat(values.get(0)).isCloseTo(2.8010 - 0.1890 - 2.6100, within(1e-9));
    assertThat(values.get(1)).isCloseTo(2.8010 - 0.1890 - 2.6099, within(1e-9));
    assertThat(values.get(2)).isCloseTo(2.8010 - 0.1890 - 2.6101, within(1e-9));
    assertThat(values.get(3)).isCloseTo(2.8010 - 0.1892 - 2.6086, within(1e-9));
    assertThat(chart.columns().get(0).verdict()).isEqualTo("no limit");
    assertThat(chart.columns().get(1).high())
        .isGreaterThan(chart.columns().get(1).value().orElseThrow());
  }

  @Test
  void limitsTypedForReadingsAreThoseOfThePlotAndTheOtherWayRound() {
    OpenJob job = PlotSample.measured();
    new Instruments(job).limit("main-journal", "clearance", "0.0010", "0.0025", "manual, p. 6-12");
    RecordPlot plot = find(RecordPlots.of(job), "Oil clearance of the main bearings");
    assertThat(plot.chart().columns().get(0).limits()).containsExactly(0.0010, 0.0025);
    assertThat(plot.chart().columns().get(0).verdict()).isEqualTo("in");
    assertThat(plot.chart().columns().get(3).verdict()).isEqualTo("out");
    assertThat(plot.sentence()).contains("0.0010 in to 0.0025 in (manual, p. 6-12)");
    assertThat(plot.chart().columns())
        .extracting(column -> column.verdict())
        .filteredOn(mark -> !mark.isEmpty())
        .allSatisfy(mark -> assertThat(plot.sentence()).contains(" " + mark + ": "));

    ClearanceLimits.set(job, Bearings.RODS, Field.UPPER, "0.0005 in");
    assertThat(new OilClearances(job.state()).list())
        .filteredOn(clearance -> clearance.look() == Look.FAIL)
        .extracting(BearingClearance::words)
        .containsExactly("main 2");
    ClearanceLimits.set(job, Bearings.RODS, Field.SOURCE, "manual, p. 6-13");
    assertThat(new OilClearances(job.state()).list())
        .filteredOn(clearance -> clearance.words().equals("rod 3"))
        .singleElement()
        .satisfies(clearance -> assertThat(clearance.look()).isEqualTo(Look.FAIL));
    assertThat(ClearanceLimits.set(job, Bearings.RODS, Field.SOURCE, ""))
        .isInstanceOf(FigureOutcome.Refused.class);
    assertThat(ClearanceLimits.set(job, Bearings.RODS, Field.UPPER, ""))
        .isEqualTo(new FigureOutcome.Done());
    assertThat(ClearanceLimits.of(job, Bearings.RODS).upper()).isEmpty();
  }

  @Test
  void theRecordSaysWhatStandsBehindPlusMinus() {
    assertThat(BuildRecord.of(PlotSample.measured()).sections())
        .filteredOn(section -> section.title().equals("Measured"))
        .singleElement()
        .satisfies(
            section ->
                assertThat(section.columns())
                    .contains(
                        "result ± standard uncertainty u",
                        "judged with " + Acceptance.GUARD_FACTOR + " u"));
  }

  /** Main 2: 0.0019 in front and 0.0032 in at the rear, about 0.0026 in by the mean. */
  @Test
  void listRecordAndPlotGiveOneVerdict() {
    oneVerdict("0.0010", "0.0032", Acceptance.Ruling.UNDECIDED, "?");
    oneVerdict("0.0010", "0.0028", Acceptance.Ruling.REJECT, "out");
    oneVerdict("0.0010", "0.0040", Acceptance.Ruling.ACCEPT, "in");
    oneVerdict("0.0019", "0.0040", Acceptance.Ruling.UNDECIDED, "?");
  }

  private static void oneVerdict(
      String lower, String upper, Acceptance.Ruling decision, String plotted) {
    OpenJob job = PlotSample.measured();
    new Instruments(job).limit("main-journal", "clearance", lower, upper, "manual, p. 6-12");
    BearingClearance listed =
        new OilClearances(job.state())
            .list().stream()
                .filter(clearance -> clearance.words().equals("main 2"))
                .findFirst()
                .orElseThrow();
    assertThat(listed.judgement().orElseThrow().decision()).isEqualTo(decision);
    String word = decision.name().toLowerCase(Locale.ROOT);
    assertThat(listed.sentence()).contains(upper + " in: " + word);
    assertThat(BuildRecord.of(job).sections())
        .flatExtracting(RecordSection::rows)
        .filteredOn(row -> row.cells().get(0).equals("main 2, oil clearance"))
        .singleElement()
        .satisfies(
            row -> {
              assertThat(row.cells().get(1)).contains("least 0.00190", "most 0.00320");
              assertThat(row.cells().get(2)).contains(upper + " in: " + word);
              assertThat(row.open()).isEqualTo(decision != Acceptance.Ruling.ACCEPT);
            });
    RecordPlot plot = find(RecordPlots.of(job), "Oil clearance of the main bearings");
    assertThat(plot.chart().columns().get(3).verdict()).isEqualTo(plotted);
  }

  @Test
  void theOddOneOfASetIsASquareWithAWord() {
    List<RecordPlot> plots = RecordPlots.of(PlotSample.measured());
    Chart studs = find(plots, "Straightedge over the stud tops, left bank").chart();
    assertThat(studs.columns().stream().filter(Chart.Column::odd))
        .singleElement()
        .satisfies(
            column -> {
              assertThat(column.place()).isEqualTo(6);
              assertThat(column.verdict()).isEqualTo("fail");
            });
    RecordPlot rods = find(plots, "Pushrod length: each against the middle of its side");
    assertThat(rods.chart().across().ticks()).hasSize(16);
    assertThat(rods.sentence()).startsWith("Odd one out: 5 EX, 0.0081 in below");
  }

  @Test
  void theRecordTellsWhatItsPlotsSay() {
    OpenJob job = PlotSample.planned();
    BuildRecord record = BuildRecord.of(job).withPlots(RecordPlots.of(job));
    assertThat(record.plots()).hasSize(8);
    var table = record.sections().get(record.sections().size() - 1);
    assertThat(table.title()).isEqualTo("Plots");
    assertThat(table.rows()).hasSize(8);
    assertThat(table.rows().get(1).cells().get(1))
        .contains("usual minimum", "from memory, unverified", "±2·u");
  }
}
