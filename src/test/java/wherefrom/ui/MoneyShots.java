package wherefrom.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.CostState;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.shop.MachineShop;
import wherefrom.rules.consequence.Article;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.money.BudgetScreen;
import wherefrom.ui.money.MoneyScreen;
import wherefrom.ui.money.PricesScreen;
import wherefrom.ui.money.WhatIfScreen;
import wherefrom.ui.record.PaperScreen;
import wherefrom.ui.record.RecordScreen;
import wherefrom.ui.record.RecordTableScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Money and the build record. */
final class MoneyShots {
  private MoneyShots() {}

  static List<Shot> all() {
    List<Shot> shots = new ArrayList<>();
    shots.add(
        new Shot(
            "money-none",
            MoneyScreen.class,
            window -> {
              window.shell.context().open(SampleJob.apart().job);
              window.shell.context().navigator().show(ScreenId.MONEY);
            }));
    shots.add(shot("money", MoneyScreen.class, ScreenId.MONEY, window -> {}));
    shots.add(
        shot("money-prices", PricesScreen.class, ScreenId.MONEY, w -> w.pressBelow("Prices")));
    shots.add(
        shot("money-budget", BudgetScreen.class, ScreenId.MONEY, w -> w.pressBelow("Budget")));
    shots.add(
        shot(
            "money-what-if",
            WhatIfScreen.class,
            ScreenId.MONEY,
            window -> {
              window.pressBelow("What if");
              window.press("Choose");
              window.press("new flat");
            }));
    shots.add(shot("record", RecordScreen.class, ScreenId.BUILD_RECORD, window -> {}));
    shots.add(
        shot(
            "record-pages",
            PaperScreen.class,
            ScreenId.BUILD_RECORD,
            window -> window.press("Look and print")));
    shots.add(
        shot(
            "record-short",
            RecordTableScreen.class,
            ScreenId.BUILD_RECORD,
            window -> window.press("In short")));
    shots.add(
        shot(
            "record-open",
            RecordTableScreen.class,
            ScreenId.BUILD_RECORD,
            window -> window.press("NOT CHECKED")));
    return shots;
  }

  private static Shot shot(
      String name, Class<? extends Screen> screen, ScreenId id, Consumer<SampleWindow> arrange) {
    return new Shot(
        name,
        screen,
        window -> {
          SampleJob sample = SampleJob.apart();
          spend(sample);
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(id);
          window.layOut();
          arrange.accept(window);
        });
  }

  private static void spend(SampleJob sample) {
    MoneyBook book = new MoneyBook(sample.job);
    book.setBudget("900", 15, "EUR");
    book.setPrice(Article.read("lifters"), "12.50");
    book.setPrice(Article.read("pushrods"), "8.20");
    new Planning(sample.job).plan(Change.of(ChangeKind.NEW_FLAT_CAM));
    book.note(0, "teardown consumables", "", CostState.PAID, "64.90", 0, "");
    book.note(0, "bored and honed", "", CostState.QUOTED, "240", 0, "by phone, for eight");
    book.note(0, "gasket set", "", CostState.COMMITTED, "118.50", 0, "");
    book.note(0, "cam", "", CostState.QUOTED, "189", 1, "");
    for (String place : List.of("pushrod@1EX", "pushrod@1IN", "pushrod@3EX")) {
      int item = sample.part(place).item();
      sample.job.record(new LookRecorded(item, "pushrod-roll", Look.PASS, ""));
      sample.job.record(new DecisionMade(item, Decision.REUSE, "straight"));
    }
    new Fitting(sample.job)
        .fitOnPurpose(sample.part("pushrod@5EX"), sample.spot("7EX"), "matched pair");
    new MachineShop(sample.job).add(1, "block", 1, "bore and hone to", "3.8900", "0.0005", false);
  }
}
