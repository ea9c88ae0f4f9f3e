package wherefrom.ui;

import java.util.List;
import java.util.function.BiConsumer;
import wherefrom.engine.Section;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.change.Planning;
import wherefrom.job.decide.Deciding;
import wherefrom.job.handling.Handling;
import wherefrom.job.inspect.Inspecting;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.ui.app.CodeScreen;
import wherefrom.ui.app.HelpScreen;
import wherefrom.ui.app.RailKey;
import wherefrom.ui.app.RefusedScreen;
import wherefrom.ui.app.RestOfRailScreen;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.TypedCode;
import wherefrom.ui.app.WhoseCodeScreen;
import wherefrom.ui.benchmap.BenchMapScreen;
import wherefrom.ui.controls.Icon;
import wherefrom.ui.puttogether.PutTogetherScreen;
import wherefrom.ui.puttogether.SectionScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.takeapart.TakeApartScreen;

/** Messages, questions, and what a code is answered with that a screen cannot take. */
final class AnswerShots {
  private static final String FOREIGN = "4006381333931";
  private static final String LONG =
      "The folder for copies is not there. Put the USB drive in, or choose another folder in Settings."
          + " Until then the job lies on this machine alone, and nothing that happens to this"
          + " machine's disk can be made good from elsewhere.";

  private AnswerShots() {}

  static List<Shot> all() {
    return List.of(
        shot("answer-foreign", RefusedScreen.class, (window, sample) -> part(window, FOREIGN)),
        shot(
            "answer-engine",
            RefusedScreen.class,
            (window, sample) ->
                part(window, new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 9, 1).digits())),
        shot("answer-message", TakeApartScreen.class, (window, sample) -> say(window, "Kept.")),
        shot("answer-message-long", TakeApartScreen.class, (window, sample) -> say(window, LONG)),
        shot(
            "answer-message-page",
            HelpScreen.class,
            (window, sample) -> {
              say(window, LONG);
              window.pressRail("Help");
            }),
        shot("answer-code", CodeScreen.class, (window, sample) -> type(window, "12")),
        shot("answer-whose-code", WhoseCodeScreen.class, AnswerShots::otherEnginesToo),
        new Shot("rail-rest", RestOfRailScreen.class, AnswerShots::restOfRail),
        stop("answer-stop-lost", AnswerShots::lost),
        stop("answer-stop-decide", AnswerShots::doubt),
        stop("answer-stop-check", AnswerShots::gasket),
        stop("answer-stop-fitted-but", AnswerShots::fittedBut),
        stop("answer-stop-fitted-but-check", AnswerShots::fittedButCheck),
        shot(
            "answer-decisions",
            PutTogetherScreen.class,
            (window, sample) -> {
              new Deciding(sample.job).askEveryPart(true);
              window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
            }),
        shot(
            "answer-map-but",
            BenchMapScreen.class,
            (window, sample) -> {
              window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
              fittedBut(window, sample);
              window.shell.context().navigator().show(ScreenId.BENCH_MAP);
              if (window.shell.context().touch().isLarge()) {
                window.press("Rockers");
                window.pressOnSomePage("pushrods");
              } else {
                window.press("Pushrods");
              }
            }),
        shot(
            "answer-section-but",
            SectionScreen.class,
            (window, sample) -> {
              window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
              fittedBut(window, sample);
              Section section = Section.of(sample.job.state().layout(), sample.spot("3EX"));
              window
                  .shell
                  .context()
                  .navigator()
                  .open(() -> new SectionScreen(window.shell.context(), section));
            }));
  }

  private static Shot shot(
      String name, Class<? extends Screen> screen, BiConsumer<SampleWindow, SampleJob> arrange) {
    return Shot.of(name, screen, SampleJob::apart, arrange);
  }

  private static Shot stop(String name, BiConsumer<SampleWindow, SampleJob> arrange) {
    return shot(
        name,
        PutTogetherScreen.class,
        (window, sample) -> {
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
          arrange.accept(window, sample);
          pair(window, sample);
        });
  }

  private static void pair(SampleWindow window, SampleJob sample) {
    scan(window, sample.tag("pushrod@3EX"));
    scan(window, sample.card("3EX"));
  }

  private static void scan(SampleWindow window, String text) {
    window.scan(text);
    window.layOut();
  }

  private static void part(SampleWindow window, String text) {
    window.shell.context().navigator().show(ScreenId.PART, 5);
    scan(window, text);
  }

  private static void say(SampleWindow window, String sentence) {
    window.shell.context().navigator().show(ScreenId.TAKE_APART);
    window.layOut();
    window.shell.context().say(sentence);
    window.layOut();
  }

  private static void type(SampleWindow window, String digits) {
    TypedCode.ask(window.shell.context(), scanned -> {});
    window.layOut();
    digits.chars().forEach(digit -> window.pressExactly(Character.toString(digit)));
  }

  /** Six digits that the tag of another job has as well. */
  private static void otherEnginesToo(SampleWindow window, SampleJob sample) {
    TagCode tag = TagCode.find(sample.tag("pushrod@3EX")).orElseThrow();
    String typed = tag.typed().replace(" ", "");
    window.services.shelf.put("launch", sample.job).share("Gray six", typed);
    type(window, typed);
    window.press("Done");
  }

  private static void lost(SampleWindow window, SampleJob sample) {
    new Handling(sample.job).lost(sample.part("pushrod@3EX").item(), "");
  }

  private static void doubt(SampleWindow window, SampleJob sample) {
    look(sample, Look.SUSPECT);
  }

  private static void look(SampleJob sample, Look look) {
    Subject pushrod = Subject.ofPart(sample.part("pushrod@3EX").item());
    new Inspecting(sample.job).answer(pushrod, "pushrod-roll", look, "");
  }

  private static void gasket(SampleWindow window, SampleJob sample) {
    new Planning(sample.job).make(Change.at(ChangeKind.GASKET_THICKNESS, ""));
  }

  private static void fittedBut(SampleWindow window, SampleJob sample) {
    pair(window, sample);
    look(sample, Look.FAIL);
  }

  private static void fittedButCheck(SampleWindow window, SampleJob sample) {
    pair(window, sample);
    gasket(window, sample);
  }

  /** What has no room on the rail: here shown whatever the text size. */
  private static void restOfRail(SampleWindow window) {
    ScreenContext context = window.shell.context();
    context
        .navigator()
        .open(
            () ->
                new RestOfRailScreen(
                    context,
                    List.of(
                        new RailKey(Icon.BENCH, "Bench", () -> {}),
                        new RailKey(Icon.CAMERA, "Camera", () -> {}))));
  }
}
