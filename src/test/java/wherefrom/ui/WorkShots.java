package wherefrom.ui;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.Node;
import wherefrom.engine.Section;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.Caution;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.handling.Handling;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.ShopWork;
import wherefrom.ui.app.CautionScreen;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.benchmap.BenchMapScreen;
import wherefrom.ui.part.PartScreen;
import wherefrom.ui.print.NudgeScreen;
import wherefrom.ui.print.PreviewScreen;
import wherefrom.ui.print.PrintTagsScreen;
import wherefrom.ui.print.SheetScreen;
import wherefrom.ui.print.TrackScreen;
import wherefrom.ui.puttogether.HeldScreen;
import wherefrom.ui.puttogether.MissingScreen;
import wherefrom.ui.puttogether.SectionScreen;
import wherefrom.ui.puttogether.WayOutScreen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.takeapart.TakeApartScreen;

/** The screens of the work on the engine, in the states worth looking at. */
final class WorkShots {
  private WorkShots() {}

  static List<Shot> all() {
    List<Shot> shots = new ArrayList<>();
    shots.add(shot("missing", MissingScreen.class, WorkShots::missing));
    shots.add(shot("held", HeldScreen.class, WorkShots::held));
    shots.add(
        shot(
            "section",
            SectionScreen.class,
            (window, sample) -> {
              ScreenContext context = window.shell.context();
              context.navigator().open(() -> new SectionScreen(context, Section.MAINS));
            }));
    shots.add(
        shot(
            "section-filled",
            SectionScreen.class,
            SampleJob::whole,
            (window, sample) -> {
              new Planning(sample.job).make(Change.of(ChangeKind.HOT_TANKED));
              ScreenContext context = window.shell.context();
              context.navigator().open(() -> new SectionScreen(context, Section.MAINS));
            }));
    shots.add(
        shot(
            "way-out",
            WayOutScreen.class,
            (window, sample) -> {
              missing(window, sample);
              ScreenContext context = window.shell.context();
              context.navigator().open(() -> new WayOutScreen(context));
            }));
    shots.addAll(bench());
    return shots;
  }

  private static List<Shot> bench() {
    List<Shot> shots = new ArrayList<>();
    shots.add(
        shot(
            "take-apart",
            TakeApartScreen.class,
            WorkShots::begun,
            (window, sample) -> window.shell.context().navigator().show(ScreenId.TAKE_APART)));
    shots.add(
        shot(
            "take-apart-out",
            TakeApartScreen.class,
            WorkShots::begun,
            (window, sample) -> {
              window.shell.context().navigator().show(ScreenId.TAKE_APART);
              scan(window, sample.tag("pushrod@3EX"));
            }));
    shots.add(
        shot(
            "take-apart-under",
            TakeApartScreen.class,
            WorkShots::begun,
            (window, sample) -> {
              window.shell.context().navigator().show(ScreenId.TAKE_APART);
              window.layOut();
              tapped(window, "pushrod");
            }));
    shots.add(
        shot(
            "take-apart-out-of-turn",
            TakeApartScreen.class,
            WorkShots::begun,
            (window, sample) -> {
              window.shell.context().navigator().show(ScreenId.TAKE_APART);
              window.layOut();
              tapped(window, "rocker");
            }));
    shots.add(
        shot(
            "take-apart-pivot",
            TakeApartScreen.class,
            () -> SampleJob.whole("v8-odd-even", EnumSet.allOf(PartKind.class)),
            (window, sample) -> {
              window.shell.context().navigator().show(ScreenId.TAKE_APART);
              scan(window, sample.tag("rocker@1IN"));
            }));
    shots.add(
        shot(
            "take-apart-shell",
            TakeApartScreen.class,
            WorkShots::shellsLeft,
            (window, sample) -> window.shell.context().navigator().show(ScreenId.TAKE_APART)));
    shots.add(
        shot(
            "cautions",
            CautionScreen.class,
            SampleJob::whole,
            (window, sample) -> {
              ScreenContext context = window.shell.context();
              context.navigator().open(() -> new CautionScreen(context, Caution.atWashing()));
            }));
    shots.add(to("bench-map", BenchMapScreen.class, ScreenId.BENCH_MAP, 0));
    shots.add(
        shot(
            "bench-map-washing",
            BenchMapScreen.class,
            WorkShots::scattered,
            (window, sample) -> {
              window.shell.context().navigator().show(ScreenId.BENCH_MAP);
              scan(window, new TagCode(TagType.BASKET, SampleJob.ENGINE, 4, 1).digits());
            }));
    shots.add(to("part", PartScreen.class, ScreenId.PART, 20));
    shots.add(
        shot(
            "part-unmated",
            PartScreen.class,
            WorkShots::scattered,
            (window, sample) ->
                window
                    .shell
                    .context()
                    .navigator()
                    .show(ScreenId.PART, item(sample, "rocker@7EX"))));
    shots.add(to("print-tags", PrintTagsScreen.class, ScreenId.PRINT_TAGS, 0));
    shots.add(
        shot(
            "print-nudge",
            NudgeScreen.class,
            SampleJob::whole,
            (window, sample) -> {
              window.shell.context().navigator().show(ScreenId.PRINT_TAGS);
              window.layOut();
              paper(window, "Move print");
            }));
    shots.add(
        shot(
            "print-preview",
            PreviewScreen.class,
            SampleJob::whole,
            (window, sample) -> preview(window, 5, 4)));
    shots.add(
        shot(
            "print-half-used",
            PrintTagsScreen.class,
            SampleJob::whole,
            (window, sample) -> {
              preview(window, 5, 4);
              window.pressRail("Back");
            }));
    shots.add(
        shot(
            "print-track",
            TrackScreen.class,
            SampleJob::whole,
            (window, sample) -> {
              window.shell.context().navigator().show(ScreenId.PRINT_TAGS);
              window.layOut();
              window.press("What");
              window.pressOnSomePage("Track more kinds of part");
            }));
    shots.add(
        shot(
            "print-sheet",
            SheetScreen.class,
            SampleJob::whole,
            (window, sample) -> {
              window.shell.context().navigator().show(ScreenId.PRINT_TAGS);
              window.layOut();
              paper(window, "First label");
            }));
    return shots;
  }

  /** Looks at the first page before it is printed, on a half-used sheet, moved. */
  private static void preview(SampleWindow window, int start, int steps) {
    window.shell.context().navigator().show(ScreenId.PRINT_TAGS);
    window.layOut();
    paper(window, "First label");
    window.press(Integer.toString(start));
    paper(window, "Move print");
    for (int step = 0; step < steps; step++) {
      window.press("Right");
      window.press("Down");
    }
    window.pressRail("Back");
    ScreenContext context = window.shell.context();
    if (context.touch().isLarge()) {
      window.press("See it");
    } else {
      window.targets().stream()
          .filter(node -> node.getClass().getSimpleName().equals("SheetView"))
          .forEach(window::press);
    }
  }

  /** A key of the paper's, which large text has on a page of its own. */
  private static void paper(SampleWindow window, String words) {
    if (window.shell.context().touch().isLarge()) {
      window.press("Paper");
      window.pressOnSomePage(words);
    } else {
      window.press(words);
    }
  }

  /** Goes through the pages of the engine, whatever the glass shows of them, to one pushrod. */
  /** A part at 5 EX is tapped, by way of the engine's pages. */
  private static void tapped(SampleWindow window, String kind) {
    List<String> ways =
        List.of(
            "cylinder 5, exhaust, " + kind,
            "5 ex " + kind,
            kind,
            "cylinder 5, exhaust",
            "cylinder 5",
            "engine",
            "down");
    boolean away = false;
    for (int step = 0; step < 9; step++) {
      window.layOut();
      boolean back = window.shell.current() instanceof TakeApartScreen;
      if (back && away) {
        return;
      }
      away = !back;
      window.press(
          ways.stream()
              .flatMap(way -> window.targets().stream().filter(node -> says(window, node, way)))
              .findFirst()
              .orElseThrow(() -> new AssertionError(window.targets().toString())));
    }
  }

  private static boolean says(SampleWindow window, Node node, String way) {
    String spoken = String.valueOf(node.getAccessibleText()) + "|" + window.words(node);
    return Stream.of(spoken.split("[|]"))
        .anyMatch(words -> words.toLowerCase(Locale.ROOT).startsWith(way));
  }

  /** Eleven parts are out; the pushrod under the last rocker comes next. */
  private static SampleJob begun() {
    SampleJob sample = SampleJob.whole();
    for (String spot : List.of("1IN", "1EX", "2IN", "2EX", "3IN")) {
      sample.job.record(new PartOut(item(sample, "rocker@" + spot)));
      sample.job.record(new PartOut(item(sample, "pushrod@" + spot)));
    }
    sample.job.record(new PartOut(item(sample, "rocker@3EX")));
    return sample;
  }

  /** All is out but the shells. */
  private static SampleJob shellsLeft() {
    SampleJob sample = SampleJob.whole();
    sample.job.state().parts().stream()
        .map(part -> part.part())
        .filter(part -> part.home().kind().stage() < PartKind.ROD_SHELL.stage())
        .toList()
        .forEach(part -> sample.job.record(new PartOut(part.item())));
    sample.job.record(new PartOut(item(sample, "rod-shell@R1U")));
    return sample;
  }

  private static Shot to(String name, Class<? extends Screen> screen, ScreenId id, int item) {
    return shot(
        name,
        screen,
        WorkShots::scattered,
        (window, sample) -> {
          window.shell.context().navigator().show(id, item);
          window.layOut();
        });
  }

  /** Parts in every state that a place can be in. */
  private static SampleJob scattered() {
    SampleJob sample = SampleJob.apart();
    Handling handling = new Handling(sample.job);
    handling.offForWashing(item(sample, "pushrod@1EX"), 4);
    handling.offForWashing(item(sample, "pushrod@3EX"), 4);
    handling.lost(item(sample, "pushrod@2IN"), "fell behind the bench");
    sample.job.record(
        new SentToShop(1, List.of(item(sample, "rod-shell@R3U")), "measure", ShopWork.OTHER));
    new Fitting(sample.job).fit(sample.part("pushrod@7IN"), sample.spot("7IN"), false);
    onPurpose(sample, "pushrod@5EX", "7EX");
    new ToFit(sample.job).leave(new Place(PartKind.PUSHROD, sample.spot("8EX")), "later");
    handling.note(20, "a little rust below the cup");
    handling.photo(20, "p.png", "the lower end");
    handling.photo(20, "tall.png", "");
    handling.photo(20, "gone.png", "the cup");
    return sample;
  }

  private static int item(SampleJob sample, String placeKey) {
    return sample.part(placeKey).item();
  }

  /** The screen over a job of its own for every picture. */
  private static Shot shot(
      String name, Class<? extends Screen> screen, BiConsumer<SampleWindow, SampleJob> arrange) {
    return shot(name, screen, SampleJob::apart, arrange);
  }

  private static Shot shot(
      String name,
      Class<? extends Screen> screen,
      Supplier<SampleJob> job,
      BiConsumer<SampleWindow, SampleJob> arrange) {
    return Shot.of(name, screen, job, arrange);
  }

  private static void missing(SampleWindow window, SampleJob sample) {
    onPurpose(sample, "pushrod@1EX", "3EX");
    onPurpose(sample, "pushrod@3EX", "5EX");
    onPurpose(sample, "pushrod@5EX", "1EX");
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> new MissingScreen(context));
  }

  private static void held(SampleWindow window, SampleJob sample) {
    for (String pushrod : List.of("pushrod@1IN", "pushrod@3EX", "pushrod@5EX")) {
      new Inspecting(sample.job)
          .answer(Subject.ofPart(sample.part(pushrod).item()), "pushrod-roll", Look.SUSPECT, "");
    }
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> new HeldScreen(context));
  }

  private static void onPurpose(SampleJob sample, String part, String spot) {
    new Fitting(sample.job).fitOnPurpose(sample.part(part), sample.spot(spot), "matched pair");
  }

  private static void scan(SampleWindow window, String digits) {
    window.scan(digits);
  }
}
