package wherefrom.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import wherefrom.engine.Section;
import wherefrom.job.Fitting;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.puttogether.MissingScreen;
import wherefrom.ui.puttogether.PutTogetherScreen;
import wherefrom.ui.puttogether.SectionScreen;
import wherefrom.ui.puttogether.WayOutScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** The screens of the work on the engine, in the states worth looking at. */
final class WorkShots {
  private WorkShots() {}

  static List<Shot> all() {
    List<Shot> shots = new ArrayList<>();
    shots.add(together("together", (window, sample) -> {}));
    shots.add(
        together("together-half", (window, sample) -> scan(window, sample.tag("pushrod@3EX"))));
    shots.add(
        together("together-right", (window, sample) -> pair(window, sample, "pushrod@3EX", "3EX")));
    shots.add(
        together("together-stop", (window, sample) -> pair(window, sample, "pushrod@3EX", "5EX")));
    shots.add(
        together(
            "together-stop-half",
            (window, sample) -> pair(window, sample, "main-shell@M2U", "M2L")));
    shots.add(together("together-stop-taken", WorkShots::taken));
    shots.add(
        together(
            "together-stop-engine",
            (window, sample) ->
                scan(window, new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 7, 1).digits())));
    shots.add(
        together(
            "together-ask", (window, sample) -> scan(window, wrong(sample.tag("pushrod@3EX")))));
    shots.add(together("together-list", (window, sample) -> window.press("Follow the list")));
    shots.add(shot("missing", MissingScreen.class, WorkShots::missing));
    shots.add(
        shot(
            "section",
            SectionScreen.class,
            (window, sample) -> {
              Desk desk = window.shell.desk();
              desk.navigator().open(() -> new SectionScreen(desk, Section.MAINS));
            }));
    shots.add(
        shot(
            "way-out",
            WayOutScreen.class,
            (window, sample) -> {
              missing(window, sample);
              Desk desk = window.shell.desk();
              desk.navigator().open(() -> new WayOutScreen(desk));
            }));
    return shots;
  }

  private static Shot together(String name, BiConsumer<SampleWindow, SampleJob> arrange) {
    return shot(
        name,
        PutTogetherScreen.class,
        (window, sample) -> {
          window.shell.desk().navigator().show(ScreenId.PUT_TOGETHER);
          arrange.accept(window, sample);
        });
  }

  /** The screen over a job of its own for every picture. */
  private static Shot shot(
      String name, Class<? extends Screen> screen, BiConsumer<SampleWindow, SampleJob> arrange) {
    return new Shot(
        name,
        screen,
        window -> {
          SampleJob sample = SampleJob.apart();
          window.shell.desk().open(sample.job);
          arrange.accept(window, sample);
        });
  }

  private static void taken(SampleWindow window, SampleJob sample) {
    pair(window, sample, "rod-shell@R3U", "R3U");
    onPurpose(sample, "pushrod@5EX", "3EX");
    pair(window, sample, "pushrod@3EX", "3EX");
  }

  private static void missing(SampleWindow window, SampleJob sample) {
    onPurpose(sample, "pushrod@1EX", "3EX");
    onPurpose(sample, "pushrod@3EX", "5EX");
    onPurpose(sample, "pushrod@5EX", "1EX");
    Desk desk = window.shell.desk();
    desk.navigator().open(() -> new MissingScreen(desk));
  }

  private static void onPurpose(SampleJob sample, String part, String spot) {
    new Fitting(sample.job).fitOnPurpose(sample.part(part), sample.spot(spot), "matched pair");
  }

  private static void pair(SampleWindow window, SampleJob sample, String part, String spot) {
    scan(window, sample.tag(part));
    scan(window, sample.card(spot));
  }

  private static void scan(SampleWindow window, String digits) {
    ((Scannable) window.shell.current()).scan(digits);
  }

  /** The same digits with one of them changed. */
  private static String wrong(String digits) {
    char last = digits.charAt(10);
    return digits.substring(0, 10) + (last == '9' ? '0' : (char) (last + 1)) + digits.substring(11);
  }
}
