package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.change.Planning;
import wherefrom.job.decide.Deciding;
import wherefrom.job.entry.CostState;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.PlanCost;
import wherefrom.job.money.Replacement;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Money;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Consequence;

/**
 * A roller cam, and a cam that failed, on an engine with flat lifters. What the change to rollers
 * asks for is common practice, no source.
 */
class RollerCamTest {
  private final BenchJob bench = BenchJob.v8();
  private final Planning planning = new Planning(bench.job);
  private final MoneyBook money = new MoneyBook(bench.job);
  private final Deciding deciding = new Deciding(bench.job);

  private static List<String> keys(List<Consequence> consequences) {
    return consequences.stream().map(one -> one.key() + " " + one.effect()).toList();
  }

  private static Change of(ChangeKind kind) {
    return Change.of(kind);
  }

  @Test
  void aRollerCamWhereTheLiftersAreFlatAsksForAllThatTheChangeToRollerLiftersAsksFor() {
    List<Consequence> follows = planning.preview(of(ChangeKind.NEW_ROLLER_CAM));
    assertThat(keys(follows)).containsAll(keys(planning.preview(of(ChangeKind.FLAT_TO_ROLLER))));
    assertThat(follows)
        .extracting(Consequence::headline)
        .contains("must be new: 16 roller lifters", "must be new: 16 pushrods");
    assertThat(follows)
        .extracting(Consequence::name)
        .contains(
            "springs", "pushrod-length", "preload", "distributor-gear", "thrust-button", "guides");
    assertThat(follows)
        .extracting(Consequence::sentence)
        .anyMatch(words -> words.contains("This is the change from flat to roller lifters"));
  }

  @Test
  void oncePutInTheRollerCamStopsFlatLiftersAndOldPushrods() {
    planning.make(of(ChangeKind.NEW_ROLLER_CAM));
    assertThat(bench.word("lifter@3EX")).isEqualTo("must be new");
    assertThat(bench.word("pushrod@3EX")).isEqualTo("must be new");
    assertThat(bench.word("rocker@3EX")).isEqualTo("right place");
  }

  @Test
  void aRollerCamWhereTheLiftersAreRollersAlreadyIsNoSuchChange() {
    Planning roller = new Planning(BenchJob.rollerV8().job);
    assertThat(roller.preview(of(ChangeKind.NEW_ROLLER_CAM)))
        .extracting(Consequence::rule)
        .contains("R6")
        .doesNotContain("R7");
  }

  @Test
  void twoPlansForDifferentCamsContradictEachOther() {
    planning.plan(of(ChangeKind.NEW_FLAT_CAM));
    assertThat(planning.findContradiction(of(ChangeKind.NEW_FLAT_CAM))).isEmpty();
    assertThat(planning.findContradiction(of(ChangeKind.HOT_TANKED))).isEmpty();
    for (ChangeKind other :
        List.of(ChangeKind.NEW_ROLLER_CAM, ChangeKind.FLAT_TO_ROLLER, ChangeKind.CAM_REGROUND)) {
      assertThat(planning.findContradiction(of(other)))
          .contains(
              "Plan 1 (new flat-tappet cam) speaks against it: the engine takes one cam. Drop one"
                  + " of the two.");
    }
    planning.drop(1, "");
    planning.plan(of(ChangeKind.NEW_ROLLER_CAM));
    assertThat(planning.findContradiction(of(ChangeKind.FLAT_TO_ROLLER))).isEmpty();
  }

  @Test
  void thePriceOfFlatLiftersDoesNotCountForRollerLiftersAndTheTotalIsOnlyTheLeast() {
    money.setBudget("1000", 0, "EUR");
    money.setPrice(Article.read("lifters"), "12.50");
    money.setPrice(Article.read("pushrods"), "10");
    PlanCost effect = money.effect(of(ChangeKind.FLAT_TO_ROLLER));
    assertThat(effect.sum()).isEqualTo(Money.ofCents(16 * 1000));
    assertThat(effect.sentence())
        .contains("+16 roller lifters (no price typed)", "+1 roller cam (no price typed)")
        .endsWith("Total at least 160.00 EUR; at most 840.00 EUR left.");
    money.setPrice(Article.read("roller lifters"), "40");
    money.setPrice(Article.read("roller cam"), "300");
    // 160 + 16 · 40 + 300
    assertThat(money.effect(of(ChangeKind.FLAT_TO_ROLLER)).sentence())
        .endsWith("Total at least 1100.00 EUR is over the budget by at least 100.00 EUR.");
  }

  @Test
  void rollerLiftersComeInPlaceOfFlatOnesNotBesideThem() {
    money.setBudget("1000", 0, "EUR");
    money.setPrice(Article.read("lifters"), "12.50");
    money.setPrice(Article.read("roller lifters"), "40");
    money.setPrice(Article.read("roller cam"), "0");
    money.setPrice(Article.read("pushrods"), "0");
    bench.decide("lifter@3EX", Decision.REPLACE);
    assertThat(money.budget().toBuy()).isEqualTo(Money.ofCents(1250));
    assertThat(money.effect(of(ChangeKind.FLAT_TO_ROLLER)).withIt().toBuy())
        .isEqualTo(Money.ofCents(16 * 4000));
  }

  @Test
  void aFailedLobePutsTheCamOnTheListBesideItsLifters() {
    assertThat(deciding.purchases()).extracting(thing -> thing.what().id()).doesNotContain("cam");
    bench.record(new FeatureLooked("lobe@3EX", "lobe-look", Look.FAIL, "pitted"));
    assertThat(deciding.replacements())
        .filteredOn(line -> line.kind() == PartKind.LIFTER)
        .extracting(Replacement::pieces)
        .containsExactly(16);
    assertThat(deciding.purchases())
        .filteredOn(thing -> thing.what().id().equals("cam"))
        .singleElement()
        .satisfies(cam -> assertThat(cam.reason()).startsWith("rule 5: cam lobe failed"));
    bench.record(new FeatureLooked("lobe@5EX", "lobe-look", Look.FAIL, "pitted"));
    assertThat(deciding.purchases())
        .filteredOn(thing -> thing.what().id().equals("cam"))
        .hasSize(1);
  }

  @Test
  void theCamLeavesTheListOnceItIsPaidForOrAnotherIsIn() {
    bench.record(new FeatureLooked("lobe@3EX", "lobe-look", Look.FAIL, "pitted"));
    money.note(0, "Cam", "", CostState.PAID, "180", 0, "");
    assertThat(deciding.purchases()).extracting(thing -> thing.what().id()).doesNotContain("cam");
    bench.job.undo();
    assertThat(deciding.purchases()).extracting(thing -> thing.what().id()).contains("cam");
    planning.make(of(ChangeKind.FLAT_TO_ROLLER));
    assertThat(deciding.purchases())
        .extracting(thing -> thing.what().id())
        .contains("roller cam")
        .doesNotContain("cam");
  }

  @Test
  void noSizeIsTakenFromAPartThatIsBent() {
    bench.look("pushrod@3EX", "pushrod-roll", Look.FAIL);
    assertThat(deciding.replacements())
        .filteredOn(line -> line.kind() == PartKind.PUSHROD)
        .extracting(Replacement::sizeWords)
        .containsExactly("as the old one was; measure a good neighbor");
    planning.make(of(ChangeKind.FLAT_TO_ROLLER));
    assertThat(deciding.replacements())
        .extracting(Replacement::sizeWords)
        .contains(
            "roller lifters, to suit the cam",
            "not known: find the length with a checking pushrod first");
  }
}
