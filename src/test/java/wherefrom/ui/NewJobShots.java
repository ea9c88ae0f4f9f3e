package wherefrom.ui;

import java.util.List;
import java.util.function.Function;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.engine.DrawnScreen;
import wherefrom.ui.engine.EngineScreen;
import wherefrom.ui.newjob.KindsScreen;
import wherefrom.ui.newjob.NewJobScreen;
import wherefrom.ui.sample.SampleWindow;

/** Beginning a job. */
final class NewJobShots {
  private NewJobShots() {}

  static List<Shot> all() {
    Layout sound = ReadyLayouts.find("v8-odd-even").orElseThrow();
    Layout wrong =
        new Layout(
            "my v8",
            "",
            sound.arrangement(),
            sound.vee(),
            sound.banks(),
            "middle",
            List.of(1, 2, 3),
            5,
            9,
            true,
            4,
            5,
            sound.lifters(),
            sound.rockers());
    return List.of(
        new Shot("new-job", NewJobScreen.class, NewJobShots::newJob),
        shot(
            "engine",
            EngineScreen.class,
            context -> new EngineScreen(context, sound, layout -> {})),
        shot(
            "engine-wrong",
            EngineScreen.class,
            context -> new EngineScreen(context, wrong, layout -> {})),
        shot("engine-drawn", DrawnScreen.class, context -> new DrawnScreen(context, sound)),
        new Shot("kinds", KindsScreen.class, NewJobShots::kinds));
  }

  private static Shot shot(
      String name,
      Class<? extends Screen> screen,
      Function<ScreenContext, ? extends Screen> maker) {
    return new Shot(
        name,
        screen,
        window -> {
          ScreenContext context = window.shell.context();
          context.navigator().open(() -> maker.apply(context));
        });
  }

  private static void newJob(SampleWindow window) {
    window.shell.context().navigator().show(ScreenId.NEW_JOB);
  }

  private static void kinds(SampleWindow window) {
    newJob(window);
    window.layOut();
    if (has(window, "Some get no tag")) {
      window.press("Some get no tag");
      return;
    }
    if (!has(window, "Tags for")) {
      window.press("More");
    }
    window.pressOnSomePage("Tags for");
  }

  private static boolean has(SampleWindow window, String key) {
    return window.targets().stream().anyMatch(one -> window.words(one).contains(key));
  }
}
