package wherefrom.ui;

import java.util.List;
import java.util.Optional;
import wherefrom.job.By;
import wherefrom.job.settings.ServerAddress;
import wherefrom.job.settings.Workplace;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.sample.PaperLogbook.Away;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.settings.SettingsScreen;
import wherefrom.ui.takeapart.TakeApartScreen;

/** Several benches at one job: where it lies, which bench this is, and a server that is away. */
final class SharedShots {
  private SharedShots() {}

  static List<Shot> all() {
    return List.of(
        new Shot("shared-where", ChoiceScreen.class, window -> go(window, "Where the jobs lie")),
        new Shot(
            "shared-address",
            TextEntryScreen.class,
            window -> go(window, "Where the jobs lie", "On a shared server")),
        new Shot("shared-bench", ChoiceScreen.class, window -> go(window, "This bench")),
        new Shot(
            "shared-who", TextEntryScreen.class, window -> go(window, "This bench", "Bench 2")),
        new Shot("shared-set", SettingsScreen.class, SharedShots::set),
        new Shot("shared-away", TakeApartScreen.class, window -> lost(window)),
        new Shot("shared-wait", TakeApartScreen.class, SharedShots::waiting),
        new Shot("shared-back", TakeApartScreen.class, SharedShots::back));
  }

  private static void go(SampleWindow window, String... keys) {
    window.shell.context().navigator().show(ScreenId.SETTINGS);
    for (String key : keys) {
      window.layOut();
      window.pressOnSomePage(key);
    }
  }

  private static void set(SampleWindow window) {
    ScreenContext context = window.shell.context();
    ServerAddress address = ServerAddress.read("postgresql://wherefrom@bench-pc/shop");
    Workplace place = context.settings().workplace().on(Optional.of(address));
    context.change(context.settings().withWorkplace(place.by(new By(2, "Ann"))));
    go(window);
    window.layOut();
    window.pressOnSomePage("This bench");
    window.layOut();
    window.pressOnSomePage("Bench 2");
    window.layOut();
    window.press("Done");
  }

  private static SampleJob lost(SampleWindow window) {
    SampleJob sample = SampleJob.whole();
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(ScreenId.TAKE_APART);
    sample.logbook.away(Away.UNSENT);
    window.layOut();
    window.scan(sample.tag("pushrod@3EX"));
    return sample;
  }

  private static void waiting(SampleWindow window) {
    SampleJob sample = lost(window);
    window.layOut();
    window.scan(sample.tag("pushrod@5EX"));
  }

  private static void back(SampleWindow window) {
    SampleJob sample = SampleJob.whole();
    window.shell.context().open(sample.job);
    window.shell.context().navigator().show(ScreenId.TAKE_APART);
    sample.logbook.away(Away.UNHEARD);
    window.layOut();
    window.scan(sample.tag("pushrod@3EX"));
    sample.logbook.away(Away.NO);
  }
}
