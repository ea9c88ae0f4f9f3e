package wherefrom.ui.numbers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.OpenJob;
import wherefrom.job.measure.Instruments;
import wherefrom.job.measure.Measuring;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.job.numbers.NumbersSample;
import wherefrom.job.numbers.PlanBook;
import wherefrom.job.numbers.PlanStepper.Stepped;
import wherefrom.quantity.Dimension;
import wherefrom.rules.consequence.Article;
import wherefrom.ui.sample.SampleJob;
import wherefrom.workings.plan.Margin;

class PlanModelTest {
  private final SampleJob sample = SampleJob.apart();
  private final OpenJob job = sample.job;
  private final PlanBook book = new PlanBook(job);
  private PlanModel model = new PlanModel(job);

  @BeforeEach
  void typeHowThingsAre() {
    NumbersSample.now(book);
  }

  private void whatIf(String input, String text) {
    if (!book.columns().contains(1)) {
      model.add();
    }
    assertThat(book.set(1, input, text)).isEqualTo(new FigureOutcome.Done());
  }

  private PlanTableRows.Row row(String name) {
    return model.rows().stream()
        .filter(row -> row.name().startsWith(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError(name + " is not among " + model.rows()));
  }

  private List<String> words(String name) {
    return row(name).cells().stream().map(PlanTableRows.Cell::words).toList();
  }

  private List<String> details(String heading) {
    return model.details().stream()
        .filter(row -> row.heading().startsWith(heading))
        .flatMap(row -> row.lines().stream())
        .toList();
  }

  @Test
  void nowAndWhatIfStandSideBySideEachWithItsBand() {
    whatIf("target", "9.5");
    assertThat(words("Ratio, no cut")).containsExactly("8.787 ± 0.059", "8.787 ± 0.059");
    assertThat(words("Ratio after the cut")).containsExactly("no cut", "9.500 ± 0.075");
    assertThat(row("Head cut").name()).isEqualTo("Head cut, in");
    assertThat(words("Head cut").get(1)).matches("0\\.0416 ± 0\\.00\\d\\d");
    // 0.100 and 0.070 in are left of 1.700 − 1.150 and of 0.520 after a lift of 0.450 in.
    assertThat(words("To coil bind")).allMatch(words -> words.startsWith("0.100 ± 0.010"));
    assertThat(words("Retainer to seal")).allMatch(words -> words.startsWith("0.070 ± 0.010"));
    assertThat(words("Valve lift")).allMatch(words -> words.startsWith("0.4500 ± 0.0015"));
  }

  /** What was read on the engine stands below what the plan says, of now alone. */
  @Test
  void theLeastThatWasReadStandsBesideThePlansRoomAtTheValve() {
    assertThat(model.rows()).noneMatch(row -> row.name().contains("read"));
    new Instruments(job).list("DIAL", Dimension.LENGTH, "0.001", "0.001", "0.001");
    List<String> inches = List.of("0.312", "0.230", "0.168", "0.126", "0.104", "0.102", "0.120");
    ReadingPlan plan = ReadingPlans.find("piston-valve").orElseThrow();
    Map<String, List<String>> taken = new HashMap<>();
    for (int at = 0; at < inches.size(); at++) {
      taken.put(plan.stations().get(at).key(), List.of(inches.get(at)));
    }
    Subject valve = new Subject.AFeature(Feature.VALVE_TIP, "3IN");
    new Measuring(job).take(new Measuring.Entry(valve, plan.key(), "DIAL", taken, true, ""));
    whatIf("target", "9.5");
    List<String> names = model.rows().stream().map(PlanTableRows.Row::name).toList();
    assertThat(names).contains("Piston to 3IN, measured, in");
    assertThat(words("Piston to 3IN").get(0)).startsWith("0.100");
    assertThat(words("Piston to 3IN").get(1)).isEmpty();
    assertThat(names.indexOf("Piston to 3IN, measured, in"))
        .isLessThan(names.indexOf("Valve lift, in"));
  }

  @Test
  void aWantedRatioTypedForNowIsNotTheRatioNow() {
    assertThat(row("Ratio").name()).isEqualTo("Ratio");
    book.set(0, "target", "9.0");
    assertThat(words("Ratio, no cut")).containsExactly("8.787 ± 0.059");
    assertThat(words("Ratio after the cut")).containsExactly("9.000 ± 0.063");
    book.set(0, "opening", "");
    assertThat(words("Ratio, no cut")).containsExactly("8.787 ± 0.059");
    assertThat(model.rows())
        .noneMatch(row -> row.name().equals("Ratio after the cut"))
        .noneMatch(row -> row.name().startsWith("Head cut"));
  }

  @Test
  void aMarginUnderTheUsualLeastIsMarkedWithWordsAndItsSource() {
    whatIf("lobe-lift", "0.340 in±0.001 in");
    PlanTableRows.Cell cell = row("To coil bind").cells().get(1);
    assertThat(cell.marked().orElseThrow().standing()).isEqualTo(Margin.Standing.UNDER);
    assertThat(cell.mark()).startsWith("under 0.060 in");
    assertThat(row("To coil bind").cells().get(0).mark()).isEmpty();
    assertThat(details("Left before coil bind"))
        .anySatisfy(
            line ->
                assertThat(line)
                    .startsWith("Less than the usual minimum, 0.060 in")
                    .contains("(from memory, unverified). Your engine's limit counts."));
  }

  @Test
  void aMarginThatTheBandCannotCarryIsNeitherClearNorUnder() {
    whatIf("installed-height", "1.670 in±0.010 in");
    PlanTableRows.Cell cell = row("To coil bind").cells().get(1);
    assertThat(cell.marked().orElseThrow().standing()).isEqualTo(Margin.Standing.UNDECIDED);
    assertThat(cell.mark()).startsWith("near 0.060 in");
    assertThat(details("Left before coil bind")).anyMatch(line -> line.startsWith("Too near"));
  }

  @Test
  void saysWhichMeasurementToMakeBetter() {
    model.choose(0);
    // dCR = (CR − 1)²/Vs · dV: 0.5 cc of the chamber against 0.3 cc of the piston and thin gaskets.
    assertThat(details("Compression ratio"))
        .anyMatch(line -> line.startsWith("Most of the ± comes from: "));
    book.set(0, "chamber", "63 cc±0.1 cc");
    assertThat(details("Compression ratio"))
        .anyMatch(line -> line.startsWith("Most of the ± comes from: piston volume"));
    book.set(0, "chamber", "63 cc±2 cc");
    assertThat(details("Compression ratio"))
        .anyMatch(line -> line.startsWith("Most of the ± comes from: chamber (9"));
  }

  @Test
  void aMissingFigureIsAskedForAndNotAssumed() {
    book.set(0, "opening", "");
    whatIf("head-cut", "0.020 in");
    assertThat(words("Not worked out").get(1)).endsWith(", see Details");
    assertThat(words("Ratio, no cut")).containsExactly("8.787 ± 0.059", "8.787 ± 0.059");
    assertThat(model.rows()).noneMatch(row -> row.name().equals("Ratio after the cut"));
    assertThat(words("Head cut")).containsExactly("0.0000", "0.0200");
    assertThat(details("Note")).anyMatch(line -> line.contains("still needed: opening"));
    book.set(0, "seal-gap", "");
    model.choose(0);
    assertThat(words("Not worked out").get(0)).endsWith(", see Details");
    assertThat(details("Note")).anyMatch(line -> line.contains("seal"));
    assertThat(model.rows()).noneMatch(row -> row.name().startsWith("Retainer to seal"));
  }

  @Test
  void whatCannotBeSaysWhyAndTheOtherColumnsStand() {
    whatIf("piston-volume", "-120 cc");
    assertThat(words("Ratio")).containsExactly("8.787 ± 0.059", "cannot be");
    assertThat(words("Not worked out").get(1)).isEqualTo("see Details");
    assertThat(model.details()).hasSize(1);
    assertThat(model.details().get(0).heading()).isEqualTo("This cannot be");
    assertThat(model.details().get(0).lines().get(0)).isNotBlank();
  }

  @Test
  void partsChecksAndMoneyFollowTheFigures() {
    new MoneyBook(job).setPrice(Article.read("head gaskets"), "20");
    whatIf("target", "9.5");
    assertThat(words("Money")).containsExactly("–", "40.00, 3 without a price");
    assertThat(words("To buy and do").get(1)).isEqualTo("4 things");
    assertThat(model.effects().get(0).heading()).isEqualTo("Together: 40.00, 3 without a price");
    assertThat(model.effects())
        .anyMatch(row -> row.heading().equals("2 × head gaskets, 40.00 (rule 14)"));
    model.choose(0);
    assertThat(model.effects().get(0).heading()).isEqualTo("Nothing follows");
  }

  @Test
  void stepsAndTypedFiguresGoIntoTheChosenColumnAlone() {
    whatIf("target", "9.5");
    model.stepOther(Stepped.RATIO);
    assertThat(model.steppedWords()).isEqualTo("wanted ratio: 9.5");
    model.step(1);
    assertThat(model.steppedWords()).isEqualTo("wanted ratio: 9.6");
    model.type("10");
    assertThat(words("Ratio after the cut").get(1)).isEqualTo("10.000 ± 0.090");
    assertThat(words("Ratio, no cut").get(0)).isEqualTo("8.787 ± 0.059");
    assertThat(model.type("ten")).isInstanceOf(FigureOutcome.Refused.class);
    assertThat(model.steppedWords()).isEqualTo("wanted ratio: 10");
    model.choose(0);
    assertThat(model.step(1)).isInstanceOf(FigureOutcome.Refused.class);
  }

  @Test
  void aColumnThatIsGoneIsNoLongerChosen() {
    model.add();
    model.add();
    assertThat(model.chosen()).isEqualTo(2);
    book.drop(2);
    assertThat(model.chosen()).isZero();
  }

  @Test
  void theTableIsTheSameAfterARestart() {
    whatIf("target", "9.5");
    model.add();
    book.set(2, "head-cut", "0.020 in");
    List<PlanTableRows.Row> before = model.rows();
    model = new PlanModel(new OpenJob(sample.logbook, SampleJob.CLOCK));
    assertThat(model.rows()).isEqualTo(before);
    assertThat(model.chosen()).isEqualTo(2);
    assertThat(model.name(2)).isEqualTo("Idea 2");
  }

  @Test
  void anEmptyPlanSaysWhereToBegin() {
    PlanModel empty = new PlanModel(SampleJob.apart().job);
    assertThat(empty.rows())
        .anySatisfy(
            row -> {
              assertThat(row.name()).isEqualTo("Not worked out");
              assertThat(row.cells().get(0).words()).isEqualTo("begin with Figures");
            });
  }
}
