package wherefrom.job.numbers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.money.CostItem;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.PlanCost;
import wherefrom.job.numbers.PlanStepper.Stepped;
import wherefrom.rules.consequence.Article;
import wherefrom.ui.sample.SampleJob;
import wherefrom.workings.plan.PlanAnswer;
import wherefrom.workings.plan.PlanColumn;

class PlanBookTest {
  private final OpenJob job = SampleJob.apart().job;
  private final PlanBook book = new PlanBook(job);

  @BeforeEach
  void type() {
    NumbersSample.now(book);
  }

  private PlanColumn column(int at) {
    return (PlanColumn) book.work().get(at);
  }

  @Test
  void isThereAgainAfterARestart() {
    book.add(1);
    book.set(1, "target", "9.5");
    OpenJob again = new OpenJob(SampleJobLog.of(job), SampleJob.CLOCK);
    PlanBook reopened = new PlanBook(again);
    assertThat(reopened.work()).isEqualTo(book.work());
    assertThat(reopened.columns()).containsExactly(0, 1);
    assertThat(reopened.text(0, "bore")).isEqualTo("3.870 in±0.0005 in");
    assertThat(EngineJob.of(job.history()).standing()).isEqualTo(job.state().standing());
  }

  @Test
  void aFigureIsTakenBackLikeAnyStep() {
    book.set(0, "chamber", "60 cc");
    job.undo();
    assertThat(book.text(0, "chamber")).isEqualTo("63 cc±0.5 cc");
  }

  @Test
  void theSameFigureAgainWritesNothing() {
    int before = job.history().size();
    book.set(0, "chamber", "63 cc±0.5 cc");
    assertThat(job.history()).hasSize(before);
  }

  @Test
  void whatIsNoFigureIsRefusedAndNothingIsLost() {
    assertThat(book.set(0, "chamber", "72"))
        .isEqualTo(
            new FigureOutcome.Refused(
                "chamber: \"72\" has no unit. Add in or mm, cc, deg, lb, N or another."));
    assertThat(book.text(0, "chamber")).isEqualTo("63 cc±0.5 cc");
  }

  @Test
  void ofWantedRatioAndCutTheLastOneTypedCounts() {
    book.add(1);
    book.set(1, "head-cut", "0.020 in");
    book.set(1, "target", "9.5");
    assertThat(book.text(1, "head-cut")).isEmpty();
    assertThat(column(1).result().getValue("ratio").value()).isCloseTo(9.5, within(1e-9));
    book.set(1, "head-cut", "0.010 in");
    assertThat(book.text(1, "target")).isEmpty();
  }

  private static org.assertj.core.data.Offset<Double> within(double most) {
    return org.assertj.core.api.Assertions.within(most);
  }

  @Test
  void holdsThreeWhatIfsAndADroppedOneLeavesItsRoom() {
    for (int at = 1; at <= 3; at++) {
      book.add(book.findFree().orElseThrow());
    }
    assertThat(book.findFree()).isEmpty();
    book.rename(2, "Mild");
    assertThat(book.work().stream().map(PlanAnswer::name).toList())
        .containsExactly("now", "Idea 1", "Mild", "Idea 3");
    book.drop(2);
    assertThat(book.columns()).containsExactly(0, 1, 3);
    assertThat(book.findFree()).contains(2);
    job.undo();
    assertThat(book.sheet(2).name()).isEqualTo("Mild");
  }

  @Test
  void stepsBeginAtNoCutAndAtThePresentRatio() {
    book.add(1);
    PlanStepper stepper = new PlanStepper(book);
    assertThat(stepper.step(1, Stepped.RATIO, 1)).isEqualTo(new FigureOutcome.Done());
    assertThat(book.text(1, "target")).isEqualTo("8.9");
    stepper.step(1, Stepped.HEAD_CUT, 1);
    stepper.step(1, Stepped.HEAD_CUT, 1);
    assertThat(book.text(1, "head-cut")).isEqualTo("0.002 in");
    stepper.step(1, Stepped.GASKET, -1);
    assertThat(book.text(1, "gasket-thickness")).isEqualTo("0.039 in");
    assertThat(stepper.step(0, Stepped.HEAD_CUT, 1)).isInstanceOf(FigureOutcome.Refused.class);
    assertThat(stepper.step(1, Stepped.DECK_CUT, -1)).isInstanceOf(FigureOutcome.Refused.class);
  }

  @Test
  void namesEveryInputOfThePlanOnceInItsGroups() {
    List<String> grouped =
        List.of(PlanGroup.values()).stream()
            .flatMap(group -> group.inputs(1).stream())
            .map(input -> input.key())
            .toList();
    List<String> all =
        wherefrom.workings.plan.PlanInputs.all().stream()
            .map(input -> input.key())
            .filter(key -> !key.endsWith("-before"))
            .toList();
    assertThat(grouped).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(all);
  }

  @Test
  void millingBringsGasketsPushrodsServicesAndChecksWithTheirMoney() {
    MoneyBook money = new MoneyBook(job);
    money.setPrice(Article.read("head gaskets"), "20");
    money.setPrice(Article.read("pushrods"), "6.50");
    book.add(1);
    book.set(1, "target", "9.5");
    PlanEffects effects = PlanFollowing.of(job, column(1));
    assertThat(effects.lines().stream().map(CostItem::sentence).toList())
        .containsExactlyInAnyOrder(
            "2 × head milled, no price typed (rule 14)",
            "2 × intake faces or manifold cut, no price typed (rule 14)",
            "16 × pushrods, 104.00 (rule 8)",
            "2 × head gaskets, 40.00 (rule 14)");
    assertThat(effects.moneyWords()).isEqualTo("144.00, 2 without a price");
    assertThat(effects.sumWords()).isEqualTo(effects.moneyWords());
    PlanCost cost = effects.cost();
    List<CostItem> without = effects.lines().stream().filter(line -> !line.priced()).toList();
    PlanEffects unpriced =
        new PlanEffects(
            new PlanCost(
                without, cost.perhaps(), cost.sum(), cost.atLeast(), cost.counted(), cost.withIt()),
            List.of());
    assertThat(unpriced.sumWords()).isEqualTo("2 without a price");
    assertThat(effects.checks())
        .anySatisfy(check -> assertThat(check).contains("piston to valve"))
        .anySatisfy(check -> assertThat(check).contains("checking pushrod"));
    assertThat(PlanFollowing.of(job, column(0)).lines()).isEmpty();
  }

  @Test
  void anotherFlatCamBringsSixteenLiftersOnce() {
    book.add(1);
    book.set(1, "lobe-lift", "0.310 in");
    PlanEffects effects = PlanFollowing.of(job, column(1));
    assertThat(effects.lines())
        .filteredOn(line -> line.what().id().equals("lifters"))
        .singleElement()
        .satisfies(line -> assertThat(line.pieces()).isEqualTo(16));
  }

  private List<String> lines(String input, String text) {
    if (!book.columns().contains(1)) {
      book.add(1);
    }
    book.set(1, input, text);
    return PlanFollowing.of(job, column(1)).lines().stream().map(CostItem::sentence).toList();
  }

  @Test
  void anotherStrokeBringsTheCrankItsShellsAndTheirMoney() {
    new MoneyBook(job).setPrice(Article.read("crank"), "300");
    assertThat(lines("stroke", "3.450 in"))
        .containsExactlyInAnyOrder(
            "16 × rod shells, no price typed (rule 31)",
            "10 × main shells, no price typed (rule 31)",
            "1 × crank, 300.00 (rule 31)");
  }

  @Test
  void otherPistonsBringRingsAndABoredBlockTheLargerOnesAlone() {
    new MoneyBook(job).setPrice(Article.read("pistons"), "25");
    assertThat(lines("piston-volume", "-4 cc"))
        .containsExactlyInAnyOrder(
            "8 × pistons, 200.00 (rule 32)", "8 × piston ring sets, no price typed (rule 32)");
    assertThat(lines("bore", "3.890 in"))
        .contains("8 × pistons, 200.00 (rule 18, rule 32)")
        .contains("8 × piston ring sets, oversize, no price typed (rule 18, rule 32)")
        .noneMatch(line -> line.startsWith("8 × piston ring sets, no price"));
  }

  @Test
  void otherSpringsAreBoughtAndShimmedOnesAreNot() {
    new MoneyBook(job).setPrice(Article.read("valve springs"), "4");
    assertThat(lines("solid-height", "1.100 in"))
        .containsExactly("16 × valve springs, 64.00 (rule 30)");
    book.set(1, "solid-height", "");
    assertThat(lines("installed-height", "1.660 in")).isEmpty();
    assertThat(PlanFollowing.of(job, column(1)).checks())
        .anySatisfy(check -> assertThat(check).contains("coil bind", "(rule 30)"))
        .anySatisfy(check -> assertThat(check).contains("seat and open load"));
  }
}
