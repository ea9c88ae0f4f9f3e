package wherefrom.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.change.Planning;
import wherefrom.job.handling.Handling;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.photos.Photographing;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.parts.Action;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.CodeScreen;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.puttogether.OtherWaysScreen;
import wherefrom.ui.puttogether.PutTogetherScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/** Putting together: what waits, what is right, and every kind of stop. */
final class TogetherShots {
  private TogetherShots() {}

  static List<Shot> all() {
    List<Shot> shots = new ArrayList<>();
    shots.add(together("together", (window, sample) -> {}));
    shots.add(
        together("together-half", (window, sample) -> scan(window, sample.tag("pushrod@3EX"))));
    shots.add(together("together-place", (window, sample) -> scan(window, sample.card("R4L"))));
    shots.add(
        together("together-right", (window, sample) -> pair(window, sample, "pushrod@3EX", "3EX")));
    shots.add(
        together(
            "together-right-below",
            (window, sample) -> pair(window, sample, "rod-shell@R4L", "R4L")));
    shots.add(together("together-list", (window, sample) -> press(window, "Follow list")));
    shots.add(together("together-list-right", TogetherShots::listed));
    shots.add(
        together(
            "together-ask", (window, sample) -> scan(window, wrong(sample.tag("pushrod@3EX")))));
    shots.add(together("together-where", TogetherShots::where));
    shots.add(together("together-on-purpose", TogetherShots::onPurpose));
    shots.add(
        photographed(
            "together-photo", (window, sample) -> scan(window, sample.tag("pushrod@3EX"))));
    shots.add(
        photographed(
            "together-photo-right",
            (window, sample) -> pair(window, sample, "pushrod@3EX", "3EX")));
    shots.addAll(stops());
    shots.add(
        new Shot(
            "together-other-ways",
            OtherWaysScreen.class,
            window -> {
              together(
                      "",
                      (shown, sample) -> {
                        pair(shown, sample, "pushrod@3EX", "5EX");
                        shown.layOut();
                        shown.press("More");
                      })
                  .arrange()
                  .accept(window);
            }));
    shots.addAll(moreStops());
    shots.addAll(recordedAsIn());
    shots.addAll(typed());
    shots.add(resumed("together-resumed-engine", TogetherShots::otherEngine));
    shots.add(resumed("together-resumed-older", TogetherShots::olderTag));
    shots.add(resumed("together-resumed-settled", TogetherShots::settled));
    return shots;
  }

  private static List<Shot> stops() {
    return List.of(
        together("together-stop", (window, sample) -> pair(window, sample, "rod-shell@R8L", "R7L")),
        together(
            "together-stop-above", (window, sample) -> pair(window, sample, "pushrod@3EX", "5EX")),
        together(
            "together-stop-cylinder",
            (window, sample) -> pair(window, sample, "pushrod@3IN", "3EX")),
        together(
            "together-stop-half", (window, sample) -> pair(window, sample, "rod-shell@R7U", "R7L")),
        together(
            "together-stop-main",
            (window, sample) -> pair(window, sample, "main-shell@M2U", "M2L")),
        together("together-stop-reason", TogetherShots::reason),
        together("together-stop-trouble", TogetherShots::trouble),
        together("together-stop-taken", TogetherShots::taken),
        together("together-stop-engine", (window, sample) -> scan(window, otherEngineTag())));
  }

  /** What a person said, what was recorded before, and a part that turns up all the same. */
  private static List<Shot> recordedAsIn() {
    return List.of(
        together(
            "together-tapped",
            (window, sample) -> {
              new Fitting(sample.job).fit(sample.part("lifter@3EX"), sample.spot("3EX"), false);
              window.shell.context().navigator().show(ScreenId.PART, item(sample, "pushrod@3EX"));
              window.layOut();
              window.press("Put it back");
            }),
        together(
            "together-already",
            (window, sample) -> {
              pair(window, sample, "pushrod@3EX", "3EX");
              pair(window, sample, "pushrod@3EX", "3EX");
            }),
        together(
            "together-no-tag",
            (window, sample) -> {
              scan(window, sample.card("3EX"));
              window.shell.context().navigator().changed();
              window.layOut();
              press(window, "No tag");
              window.press("It lay as the 3 EX pushrod");
              window.press("Put it in without");
            }),
        together(
            "together-recorded-in",
            (window, sample) -> {
              new Fitting(sample.job)
                  .fitOnPurpose(sample.part("pushrod@3EX"), sample.spot("5EX"), "matched pair");
              scan(window, sample.tag("pushrod@3EX"));
            }));
  }

  /** No tag to scan: its digits are typed, or there is none at all. */
  private static List<Shot> typed() {
    return List.of(
        opened("together-code", CodeScreen.class, window -> press(window, "Type code")),
        opened(
            "together-no-tag-ways",
            ChoiceScreen.class,
            window -> {
              press(window, "Type code");
              window.layOut();
              window.press("No tag");
            }));
  }

  private static Shot opened(
      String name, Class<? extends Screen> screen, Consumer<SampleWindow> arrange) {
    return new Shot(
        name,
        screen,
        window -> together("", (shown, sample) -> arrange.accept(shown)).arrange().accept(window));
  }

  private static List<Shot> moreStops() {
    return List.of(
        together("together-stop-held", TogetherShots::failed),
        together("together-stop-held-reason", TogetherShots::failedOnPurpose),
        together("together-stop-end", TogetherShots::turned),
        together("together-stop-kind", TogetherShots::kind),
        together(
            "together-stop-no-kind",
            (window, sample) -> pair(window, sample, "pushrod@3EX", "R4L")),
        together("together-stop-new", TogetherShots::banned),
        together("together-stop-retired", TogetherShots::retired),
        together("together-stop-elsewhere", TogetherShots::elsewhere),
        together("together-stop-but", TogetherShots::fittedBut));
  }

  private static Shot together(String name, BiConsumer<SampleWindow, SampleJob> arrange) {
    return shot(
        name,
        (window, sample) -> {
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
          window.layOut();
          arrange.accept(window, sample);
          window.shell.context().navigator().changed();
        });
  }

  /** Of the place a photograph was taken before. */
  private static Shot photographed(String name, BiConsumer<SampleWindow, SampleJob> arrange) {
    return together(
        name,
        (window, sample) -> {
          Optional<Subject> pushrod = Optional.of(Subject.ofPart(item(sample, "pushrod@3EX")));
          new Photographing(sample.job).add(pushrod, "", "before.png", "as it sat");
          arrange.accept(window, sample);
        });
  }

  /** A stop that was left standing when the program was closed. */
  private static Shot resumed(String name, BiConsumer<PutTogether, SampleJob> before) {
    return shot(
        name,
        (window, sample) -> {
          before.accept(new PutTogether(sample.job), sample);
          window.shell.context().navigator().show(ScreenId.PUT_TOGETHER);
        });
  }

  private static Shot shot(String name, BiConsumer<SampleWindow, SampleJob> arrange) {
    return new Shot(
        name,
        PutTogetherScreen.class,
        window -> {
          SampleJob sample = SampleJob.apart();
          window.shell.context().open(sample.job);
          arrange.accept(window, sample);
        });
  }

  private static String otherEngineTag() {
    return new TagCode(TagType.PART, SampleJob.OTHER_ENGINE, 7, 1).digits();
  }

  private static void otherEngine(PutTogether together, SampleJob sample) {
    together.scan(sample.read(otherEngineTag()));
  }

  private static void olderTag(PutTogether together, SampleJob sample) {
    String older = sample.tag("pushrod@3EX");
    new Handling(sample.job).reissue(item(sample, "pushrod@3EX"), "soaked in oil");
    together.scan(sample.read(sample.card("3EX")));
    together.scan(sample.read(older));
  }

  private static void settled(PutTogether together, SampleJob sample) {
    Handling handling = new Handling(sample.job);
    handling.offForWashing(item(sample, "pushrod@3EX"), 4);
    together.scan(sample.read(sample.tag("pushrod@3EX")));
    together.scan(sample.read(sample.card("3EX")));
    handling.backFromWashing(item(sample, "pushrod@3EX"));
  }

  private static void listed(SampleWindow window, SampleJob sample) {
    press(window, "Follow list");
    scan(window, sample.tag("main-shell@M1U"));
  }

  private static void where(SampleWindow window, SampleJob sample) {
    press(window, "Where to?");
    scan(window, sample.tag("pushrod@3EX"));
  }

  /** A reason is chosen: what will no longer be mated stands there before it is kept. */
  private static void reason(SampleWindow window, SampleJob sample) {
    pair(window, sample, "lifter@3EX", "5EX");
    window.layOut();
    boolean large = window.shell.context().touch().isLarge();
    window.press(large ? "On purpose" : "Fit it here on purpose");
    window.press("measured better here");
  }

  /** The stop cannot be taken back: why stands on its own glass. */
  private static void trouble(SampleWindow window, SampleJob sample) {
    pair(window, sample, "rod-shell@R8L", "R7L");
    window.shell.context().navigator().changed();
    sample.logbook.fail(
        "The step could not be kept: the disk is full. It does not count. Make room on the disk,"
            + " then do it again.");
    scan(window, sample.action(Action.UNDO));
  }

  private static void onPurpose(SampleWindow window, SampleJob sample) {
    reason(window, sample);
    for (Action card : List.of(Action.NEXT, Action.NEXT, Action.YES, Action.YES)) {
      window.layOut();
      scan(window, sample.action(card));
    }
  }

  private static void taken(SampleWindow window, SampleJob sample) {
    pair(window, sample, "rod-shell@R3U", "R3U");
    new Fitting(sample.job)
        .fitOnPurpose(sample.part("pushrod@5EX"), sample.spot("3EX"), "matched pair");
    pair(window, sample, "pushrod@3EX", "3EX");
  }

  private static void look(SampleJob sample, Look look) {
    new Inspecting(sample.job)
        .answer(Subject.ofPart(item(sample, "pushrod@3EX")), "pushrod-roll", look, "");
  }

  private static void failed(SampleWindow window, SampleJob sample) {
    look(sample, Look.SUSPECT);
    pair(window, sample, "pushrod@3EX", "3EX");
  }

  private static void failedOnPurpose(SampleWindow window, SampleJob sample) {
    failed(window, sample);
    window.shell.context().navigator().changed();
    window.layOut();
    window.press(isLarge(window) ? "On purpose" : "Fit it here on purpose");
    window.press("until a new one comes");
  }

  private static void turned(SampleWindow window, SampleJob sample) {
    pair(window, sample, "pushrod@3EX", "3EX");
    window.shell.context().navigator().changed();
    window.layOut();
    window.press(isLarge(window) ? "Upside down" : "I held it");
  }

  private static void kind(SampleWindow window, SampleJob sample) {
    press(window, "Follow list");
    scan(window, sample.tag("pushrod@3EX"));
  }

  private static void banned(SampleWindow window, SampleJob sample) {
    new Planning(sample.job).make(Change.at(ChangeKind.PUSHROD_BENT, "3EX"));
    pair(window, sample, "pushrod@3EX", "3EX");
  }

  private static void retired(SampleWindow window, SampleJob sample) {
    String old = sample.tag("rod-shell@R4L");
    new Handling(sample.job).replace(item(sample, "rod-shell@R4L"), "worn out");
    scan(window, old);
    scan(window, sample.card("R4L"));
  }

  private static void elsewhere(SampleWindow window, SampleJob sample) {
    pair(window, sample, "pushrod@3EX", "3EX");
    pair(window, sample, "pushrod@3EX", "5EX");
  }

  private static void fittedBut(SampleWindow window, SampleJob sample) {
    pair(window, sample, "pushrod@3EX", "3EX");
    look(sample, Look.FAIL);
    pair(window, sample, "pushrod@3EX", "3EX");
  }

  private static boolean isLarge(SampleWindow window) {
    return window.shell.context().touch().isLarge();
  }

  /** A key that stands behind another where the person's text is large. */
  private static void press(SampleWindow window, String words) {
    if (window.targets().stream().anyMatch(key -> window.words(key).equals("More"))) {
      window.press("More");
    }
    window.press(words);
  }

  private static int item(SampleJob sample, String placeKey) {
    return sample.part(placeKey).item();
  }

  private static void pair(SampleWindow window, SampleJob sample, String part, String spot) {
    scan(window, sample.tag(part));
    scan(window, sample.card(spot));
  }

  private static void scan(SampleWindow window, String digits) {
    window.scan(digits);
  }

  /** The same digits with one of them changed. */
  private static String wrong(String digits) {
    char last = digits.charAt(10);
    return digits.substring(0, 10) + (last == '9' ? '0' : (char) (last + 1)) + digits.substring(11);
  }
}
