package wherefrom.ui;

import java.util.List;
import java.util.function.BiConsumer;
import wherefrom.inspection.Look;
import wherefrom.job.change.Planning;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.size.ChangeText;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.changes.ChangeScreen;
import wherefrom.ui.changes.ChangesScreen;
import wherefrom.ui.changes.ConsequenceScreen;
import wherefrom.ui.changes.StandingScreen;
import wherefrom.ui.changes.WhereScreen;
import wherefrom.ui.engine.EnginePageScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Plans and changes, in the states worth looking at. */
final class ChangesShots {
  private ChangesShots() {}

  static List<Shot> all() {
    return List.of(
        shot("changes", ChangesScreen.class, (window, sample) -> {}),
        shot(
            "changes-kinds",
            ChoiceScreen.class,
            (window, sample) -> window.pressBelow("Plan work")),
        where("changes-where-valve", EnginePageScreen.class, "Record a", "Rocker stud"),
        where("changes-where-rod", EnginePageScreen.class, "Record a", "Rod or main"),
        where("changes-where-bank", WhereScreen.class, "Plan work", "Head milled"),
        preview("changes-cam", Change.of(ChangeKind.NEW_FLAT_CAM)),
        preview("changes-bearing", Change.at(ChangeKind.BEARING_FAILED, "R3")),
        shot(
            "changes-planned",
            ChangeScreen.class,
            (window, sample) -> window.pressOnSomePage("Plan 1")),
        shot(
            "changes-checks",
            StandingScreen.class,
            (window, sample) -> window.press(checks(window))),
        shot(
            "changes-all",
            StandingScreen.class,
            (window, sample) ->
                window.pressOnSomePage(isLarge(window) ? "All that" : "Everything that")),
        shot(
            "changes-check",
            ConsequenceScreen.class,
            (window, sample) -> {
              window.press(checks(window));
              window.pressOnSomePage(
                  isLarge(window) ? "Check the pushrod length" : "Check before fitting: pushrods");
            }),
        shot(
            "changes-part",
            ConsequenceScreen.class,
            (window, sample) -> window.scan(sample.tag("pushrod@3EX"))));
  }

  private static boolean isLarge(SampleWindow window) {
    return window.shell.context().touch().isLarge();
  }

  private static String checks(SampleWindow window) {
    return isLarge(window) ? "Checks" : "Open checks";
  }

  private static Shot where(
      String name, Class<? extends Screen> screen, String group, String kind) {
    return shot(
        name,
        screen,
        (window, sample) -> {
          window.pressBelow(group);
          window.pressOnSomePage(kind);
        });
  }

  private static Shot preview(String name, Change change) {
    return shot(
        name,
        ChangeScreen.class,
        (window, sample) ->
            window
                .shell
                .context()
                .navigator()
                .open(() -> ChangeScreen.fresh(window.shell.context(), change)));
  }

  private static Shot shot(
      String name, Class<? extends Screen> screen, BiConsumer<SampleWindow, SampleJob> arrange) {
    return new Shot(
        name,
        screen,
        window -> {
          SampleJob sample = planned();
          window.shell.context().open(sample.job);
          window.shell.context().navigator().show(ScreenId.CHANGES);
          window.layOut();
          arrange.accept(window, sample);
        });
  }

  /** A cam that is planned, a milled head, a stud that has moved, one check that failed. */
  private static SampleJob planned() {
    SampleJob sample = SampleJob.apart();
    Planning planning = new Planning(sample.job);
    planning.plan(Change.of(ChangeKind.NEW_FLAT_CAM));
    planning.make(ChangeText.read(ChangeKind.HEAD_MILLED, "left", "0.010 in", Unit.INCH));
    planning.make(Change.at(ChangeKind.STUD_MOVED, "3EX"));
    planning.answer("R26:all-studs@3EX", Look.FAIL, "5 IN stands 0.012 in proud");
    planning.answer("R14:dowels@left", Look.PASS, "0.06 in left");
    return sample;
  }
}
