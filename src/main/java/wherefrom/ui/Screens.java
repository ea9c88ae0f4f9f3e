package wherefrom.ui;

import java.util.EnumMap;
import java.util.Map;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.ScreenMaker;
import wherefrom.ui.home.JobHomeScreen;
import wherefrom.ui.jobs.JobsScreen;
import wherefrom.ui.newjob.NewJobScreen;
import wherefrom.ui.settings.SettingsScreen;

/** Every screen that others lead to: one line each. */
public final class Screens {
  private Screens() {}

  public static Map<ScreenId, ScreenMaker> all() {
    Map<ScreenId, ScreenMaker> screens = new EnumMap<>(ScreenId.class);
    screens.put(ScreenId.JOBS, (desk, item) -> new JobsScreen(desk));
    screens.put(ScreenId.JOB_HOME, (desk, item) -> new JobHomeScreen(desk));
    screens.put(ScreenId.SETTINGS, (desk, item) -> new SettingsScreen(desk));
    screens.put(ScreenId.NEW_JOB, (desk, item) -> new NewJobScreen(desk));
    return screens;
  }
}
