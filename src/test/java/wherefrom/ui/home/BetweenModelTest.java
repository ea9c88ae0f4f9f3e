package wherefrom.ui.home;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Look;
import wherefrom.job.entry.BackFromWashing;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.money.MoneyBook;
import wherefrom.parts.PartKind;
import wherefrom.rules.consequence.ShopWork;
import wherefrom.ui.sample.SampleJob;

/** What each area of the work in between has open. */
class BetweenModelTest {

  private static BetweenModel.Area area(SampleJob sample, BetweenModel.Kind kind) {
    return new BetweenModel(sample.job).areas().get(kind.ordinal());
  }

  @Test
  void lookingComesFirstWhileAPartIsNotLookedAt() {
    SampleJob sample = SampleJob.apart();
    List<BetweenModel.Area> areas = new BetweenModel(sample.job).areas();
    assertThat(areas).hasSize(10);
    assertThat(BetweenModel.next(areas)).isEqualTo(BetweenModel.Kind.LOOK);
    assertThat(areas.get(0).line()).isEqualTo("74 to look at");
    assertThat(areas.get(0).brief()).isEqualTo("74 to do");
    assertThat(areas.get(0).done()).isZero();
  }

  @Test
  void aSuspectPartIsOpenForADecision() {
    SampleJob sample = SampleJob.apart();
    assertThat(area(sample, BetweenModel.Kind.DECIDE).line()).isEqualTo("none to decide");
    String check = Checks.of(PartKind.PUSHROD).get(0).key();
    int item = sample.part("pushrod@3EX").item();
    sample.job.record(new LookRecorded(item, check, Look.SUSPECT, ""));
    assertThat(area(sample, BetweenModel.Kind.DECIDE).line()).isEqualTo("1 to decide");
  }

  @Test
  void whatIsAwayIsCounted() {
    SampleJob sample = SampleJob.apart();
    assertThat(area(sample, BetweenModel.Kind.AWAY).line()).isEqualTo("all are here");
    sample.job.record(new OffForWashing(1, 2));
    assertThat(area(sample, BetweenModel.Kind.AWAY).line()).isEqualTo("1 washing");
    sample.job.record(new SentToShop(1, List.of(2, 3), "measure", ShopWork.OTHER));
    assertThat(area(sample, BetweenModel.Kind.AWAY).line()).isEqualTo("2 shop, 1 washing");
    sample.job.record(new BackFromWashing(1));
    assertThat(area(sample, BetweenModel.Kind.AWAY).line()).isEqualTo("2 at the shop");
    assertThat(area(sample, BetweenModel.Kind.AWAY).done()).isBetween(0.97, 0.98);
  }

  /** What has no price yet comes on top: what is left is the most that can be. */
  @Test
  void whatIsLeftOfTheBudgetIsAtMostThatWhileAPriceIsOpen() {
    SampleJob sample = SampleJob.apart();
    MoneyBook money = new MoneyBook(sample.job);
    money.setBudget("1200", 0, "USD");
    assertThat(area(sample, BetweenModel.Kind.MONEY).line()).isEqualTo("at most 1200.00 USD left");
    money.toBuy().forEach(item -> money.setPrice(item.what(), "10"));
    assertThat(area(sample, BetweenModel.Kind.MONEY).line()).matches("\\d+\\.00 USD left");
    money.setBudget("1", 0, "USD");
    assertThat(area(sample, BetweenModel.Kind.MONEY).line()).matches("\\d+\\.00 USD over");
  }

  @Test
  void whatHasNotBegunSaysSo() {
    SampleJob sample = SampleJob.whole();
    assertThat(area(sample, BetweenModel.Kind.MONEY).line()).isEqualTo("no budget yet");
    assertThat(area(sample, BetweenModel.Kind.TORQUE).line()).isEqualTo("no card yet");
    assertThat(area(sample, BetweenModel.Kind.TIMING).line()).isEqualTo("not checked");
    assertThat(area(sample, BetweenModel.Kind.NUMBERS).line()).isEqualTo("35 calculations");
    assertThat(area(sample, BetweenModel.Kind.NUMBERS).brief()).isEqualTo("35 in all");
    assertThat(area(sample, BetweenModel.Kind.DECIDE).brief()).isEqualTo("none open");
    assertThat(area(sample, BetweenModel.Kind.MONEY).brief()).isEqualTo("no budget yet");
  }
}
