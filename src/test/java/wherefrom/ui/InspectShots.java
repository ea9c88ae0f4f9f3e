package wherefrom.ui;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import wherefrom.inspection.Check;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.inspect.Inspecting;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.WordsScreen;
import wherefrom.ui.changes.FollowsScreen;
import wherefrom.ui.engine.EnginePageScreen;
import wherefrom.ui.inspect.CardScreen;
import wherefrom.ui.inspect.InspectScreen;
import wherefrom.ui.inspect.QuickTestWords;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.subject.GridScreen;

/** Looking, in the states worth looking at. */
final class InspectShots {
  private InspectShots() {}

  static List<Shot> all() {
    return List.of(
        shot("inspect", InspectScreen.class, (window, sample) -> show(window)),
        shot("inspect-unlooked", GridScreen.class, InspectShots::unlooked),
        shot("inspect-kind", EnginePageScreen.class, InspectShots::kind),
        shot("inspect-doubtful", EnginePageScreen.class, InspectShots::doubtful),
        shot("inspect-card-pushrod", CardScreen.class, card("pushrod-roll")),
        shot("inspect-card-shell", CardScreen.class, card("main-shell-face")),
        shot("inspect-card-lifter", CardScreen.class, InspectShots::answered),
        shot("inspect-card-timing", CardScreen.class, card("chain-slack")),
        shot("inspect-card-crank", CardScreen.class, card("crank-look")),
        new Shot(
            "inspect-card-answer",
            CardScreen.class,
            ChoiceScreen.class,
            on(InspectShots::answering)),
        shot("inspect-follows", FollowsScreen.class, InspectShots::failing),
        shot("inspect-words", WordsScreen.class, InspectShots::words));
  }

  private static Shot shot(
      String name, Class<? extends Screen> screen, BiConsumer<SampleWindow, SampleJob> arrange) {
    return new Shot(name, screen, on(arrange));
  }

  private static Consumer<SampleWindow> on(BiConsumer<SampleWindow, SampleJob> arrange) {
    return window -> {
      SampleJob sample = SampleJob.apart();
      window.shell.context().open(sample.job);
      arrange.accept(window, sample);
    };
  }

  private static void failing(SampleWindow window, SampleJob sample) {
    card("main-shell-face").accept(window, sample);
    window.layOut();
    if (window.shell.context().touch().isLarge()) {
      window.press("Answer");
      window.layOut();
    }
    window.pressBelow("Fail");
  }

  private static void show(SampleWindow window) {
    window.shell.context().navigator().show(ScreenId.INSPECT);
  }

  private static void unlooked(SampleWindow window, SampleJob sample) {
    show(window);
    window.layOut();
    window.pressBelow("Not looked at");
  }

  /** Parts, a place that carries no tag, and a casting that the drawing has no place for. */
  private static void doubtful(SampleWindow window, SampleJob sample) {
    Inspecting inspecting = new Inspecting(sample.job);
    inspecting.answer(
        Subject.ofPart(sample.part("pushrod@3EX").item()), "pushrod-roll", Look.SUSPECT, "");
    inspecting.answer(
        Subject.ofPart(sample.part("lifter@5IN").item()), "lifter-foot", Look.FAIL, "");
    inspecting.answer(subject(sample, find("deck")), find("deck").key(), Look.SUSPECT, "");
    show(window);
    window.layOut();
    window.pressBelow("Suspect or failed");
  }

  private static Check find(String of) {
    return Checks.all().stream().filter(check -> check.of().equals(of)).findFirst().orElseThrow();
  }

  private static void kind(SampleWindow window, SampleJob sample) {
    Inspecting inspecting = new Inspecting(sample.job);
    Subject bent = Subject.ofPart(sample.part("pushrod@3EX").item());
    inspecting.answer(bent, "pushrod-roll", Look.SUSPECT, "");
    for (Check check : Checks.of(PartKind.PUSHROD)) {
      Subject good = Subject.ofPart(sample.part("pushrod@1IN").item());
      inspecting.answer(good, check.key(), Look.PASS, "");
    }
    show(window);
    window.layOut();
    window.pressOnSomePage("Pushrods");
  }

  /** A part of the check's kind, or the first place of its feature, with that card up. */
  private static BiConsumer<SampleWindow, SampleJob> card(String key) {
    return (window, sample) -> {
      Check wanted = Checks.find(key).orElseThrow();
      Subject subject = subject(sample, wanted);
      Inspecting inspecting = new Inspecting(sample.job);
      for (Check check : Checks.all()) {
        if (check.of().equals(wanted.of()) && !check.key().equals(key)) {
          inspecting.answer(subject, check.key(), Look.PASS, "");
        }
      }
      ScreenContext context = window.shell.context();
      context.navigator().open(() -> new CardScreen(context, subject, List.of()));
    };
  }

  private static Subject subject(SampleJob sample, Check check) {
    for (Feature feature : Feature.values()) {
      if (feature.key().equals(check.of())) {
        return new Subject.AFeature(feature, feature.where(sample.job.state().layout()).get(0));
      }
    }
    return sample.job.state().places().stream()
        .filter(place -> place.kind().key().equals(check.of()))
        .map(Place::key)
        .map(place -> Subject.ofPart(sample.part(place).item()))
        .findFirst()
        .orElseThrow();
  }

  private static void answered(SampleWindow window, SampleJob sample) {
    Subject lifter = Subject.ofPart(sample.part("lifter@3EX").item());
    new Inspecting(sample.job)
        .answer(lifter, "lifter-foot", Look.SUSPECT, "rocks a little on one side only");
    new Inspecting(sample.job).answer(lifter, "lifter-sink", Look.PASS, "");
    new Inspecting(sample.job).answer(lifter, "lifter-wheel", Look.PASS, "");
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> new CardScreen(context, lifter, List.of()));
  }

  private static void answering(SampleWindow window, SampleJob sample) {
    card("pushrod-ends").accept(window, sample);
    window.layOut();
    if (window.shell.context().touch().isLarge()) {
      window.press("Answer");
    }
  }

  private static void words(SampleWindow window, SampleJob sample) {
    ScreenContext context = window.shell.context();
    Check check = Checks.find("pushrod-roll").orElseThrow();
    context
        .navigator()
        .open(() -> new WordsScreen(context, check.title(), QuickTestWords.of(check)));
  }
}
