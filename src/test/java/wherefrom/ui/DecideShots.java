package wherefrom.ui;

import java.util.List;
import java.util.function.BiConsumer;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.bags.BigParts;
import wherefrom.job.decide.Deciding;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.money.Buying;
import wherefrom.job.money.GasketSet;
import wherefrom.job.money.MoneyBook;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.rules.consequence.Article;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.decide.BuyLineScreen;
import wherefrom.ui.decide.BuyScreen;
import wherefrom.ui.decide.DecidePartScreen;
import wherefrom.ui.decide.DecideScreen;
import wherefrom.ui.decide.DecideSetScreen;
import wherefrom.ui.decide.GasketSetScreen;
import wherefrom.ui.decide.GoodsScreen;
import wherefrom.ui.decide.OffersScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Decisions, in the states worth looking at. */
final class DecideShots {
  private DecideShots() {}

  static List<Shot> all() {
    return List.of(
        shot("decide", DecideScreen.class, (window, sample) -> show(window, 0)),
        new Shot(
            "decide-fresh",
            DecideScreen.class,
            window -> {
              window.shell.context().open(SampleJob.apart().job);
              show(window, 0);
            }),
        shot(
            "decide-set",
            DecideSetScreen.class,
            (window, sample) ->
                window
                    .shell
                    .context()
                    .navigator()
                    .open(() -> new DecideSetScreen(window.shell.context(), PartKind.MAIN_SHELL))),
        shot(
            "decide-part",
            DecidePartScreen.class,
            (window, sample) -> show(window, sample.part("main-shell@M2L").item())),
        shot(
            "decide-part-open",
            DecidePartScreen.class,
            (window, sample) -> show(window, sample.part("pushrod@5EX").item())),
        shot(
            "decide-buy",
            BuyScreen.class,
            (window, sample) ->
                window
                    .shell
                    .context()
                    .navigator()
                    .open(() -> new BuyScreen(window.shell.context()))),
        shot("decide-buy-line", BuyLineScreen.class, DecideShots::line),
        shot("decide-goods", GoodsScreen.class, DecideShots::goods),
        shot("decide-gasket-set", GasketSetScreen.class, DecideShots::gaskets),
        shot("decide-gauge", ChoiceScreen.class, DecideShots::gauge),
        shot("decide-offers", OffersScreen.class, DecideShots::offers));
  }

  private static void goods(SampleWindow window, SampleJob sample) {
    offered(sample);
    line(window, sample);
    window.pressOnSomePage("Buy 1 set of 16");
  }

  private static void gauge(SampleWindow window, SampleJob sample) {
    goods(window, sample);
    window.press("Check i");
    window.layOut();
    window.pressExactly("8");
    window.press("Done");
  }

  private static void gaskets(SampleWindow window, SampleJob sample) {
    BigParts parts = new BigParts(sample.job);
    parts.nameUsual();
    for (int number = 1; number <= 12; number++) {
      parts.off(number, "for the picture");
    }
    GasketSet.tick(sample.job, Article.read("water pump gasket"), 1);
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> new GasketSetScreen(context));
  }

  private static void offers(SampleWindow window, SampleJob sample) {
    offered(sample);
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> new BuyScreen(context));
    window.layOut();
    window.press("Compare offers");
  }

  private static void offered(SampleJob sample) {
    new MoneyBook(sample.job).setBudget("1500", 15, "EUR");
    Buying.offer(sample.job, "Northside", Article.read("rod shells"), 16, "85");
    Buying.offer(sample.job, "Harbor", Article.read("rod shells"), 2, "12.50");
    Buying.offer(sample.job, "Harbor", Article.read("lifters"), 1, "6");
  }

  private static void line(SampleWindow window, SampleJob sample) {
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> new BuyScreen(context));
    window.layOut();
    window.pressOnSomePage("16 rod shells");
  }

  private static void show(SampleWindow window, int item) {
    window.shell.context().navigator().show(ScreenId.DECIDE, item);
  }

  private static Shot shot(
      String name, Class<? extends Screen> screen, BiConsumer<SampleWindow, SampleJob> arrange) {
    return Shot.of(name, screen, DecideShots::looked, arrange);
  }

  /** One shell failed, one pushrod is suspect, the rockers passed, two lifters are decided. */
  static SampleJob looked() {
    SampleJob sample = SampleJob.apart();
    look(sample, "main-shell@M2L", "main-shell-face", Look.FAIL);
    look(sample, "pushrod@5EX", "pushrod-roll", Look.SUSPECT);
    sample.job.state().parts().stream()
        .map(record -> record.part())
        .filter(part -> part.kind() == PartKind.ROCKER)
        .forEach(part -> pass(sample, part));
    Deciding deciding = new Deciding(sample.job);
    deciding.decide(sample.part("lifter@1IN").item(), Decision.REUSE, "measured good");
    deciding.decide(sample.part("lifter@3IN").item(), Decision.REPLACE, "dished");
    return sample;
  }

  private static void pass(SampleJob sample, Part part) {
    Checks.of(part.kind())
        .forEach(
            check -> sample.job.record(new LookRecorded(part.item(), check.key(), Look.PASS, "")));
  }

  private static void look(SampleJob sample, String place, String check, Look look) {
    sample.job.record(new LookRecorded(sample.part(place).item(), check, look, "seen"));
  }
}
