package wherefrom.ui;

import java.util.List;
import java.util.function.Function;
import wherefrom.job.image.Camera;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleWindow;
import wherefrom.ui.settings.AboutScreen;
import wherefrom.ui.settings.CalibrateScreen;
import wherefrom.ui.settings.CameraScreen;
import wherefrom.ui.settings.LicenseScreen;
import wherefrom.ui.settings.ScannerScreen;
import wherefrom.ui.settings.SettingsScreen;
import wherefrom.ui.settings.SoundScreen;

/** The settings of this machine. */
final class MachineShots {
  private MachineShots() {}

  static List<Shot> all() {
    return List.of(
        new Shot(
            "settings",
            SettingsScreen.class,
            window -> window.shell.context().navigator().show(ScreenId.SETTINGS)),
        shot("settings-sound", SoundScreen.class, SoundScreen::new),
        shot("settings-about", AboutScreen.class, AboutScreen::new),
        new Shot("settings-license", LicenseScreen.class, MachineShots::license),
        shot("settings-screen", CalibrateScreen.class, CalibrateScreen::new),
        shot("settings-scanner", ScannerScreen.class, ScannerScreen::new),
        shot("settings-camera-none", CameraScreen.class, CameraScreen::new),
        new Shot("settings-camera", CameraScreen.class, MachineShots::cameras));
  }

  private static Shot shot(
      String name,
      Class<? extends Screen> screen,
      Function<ScreenContext, ? extends Screen> maker) {
    return new Shot(name, screen, window -> open(window, maker));
  }

  private static void open(SampleWindow window, Function<ScreenContext, ? extends Screen> maker) {
    ScreenContext context = window.shell.context();
    context.navigator().open(() -> maker.apply(context));
  }

  private static void license(SampleWindow window) {
    open(window, AboutScreen::new);
    window.layOut();
    window.pressOnSomePage("FFmpeg and its parts");
  }

  private static void cameras(SampleWindow window) {
    window.services.cameras.add(new Camera("0", "Camera over the bench"));
    window.services.cameras.add(new Camera("1", "Built in"));
    open(window, CameraScreen::new);
  }
}
