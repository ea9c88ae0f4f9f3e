package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.sample.SampleWindow;

/** What the program is, and its terms, are to be found in the window. */
class AboutTest {
  @Test
  void settingsLeadToTheVersionAndToEachLicense() {
    SampleWindow window = Toolkit.on(() -> new SampleWindow(96, 100));
    Toolkit.on(
        () -> {
          window.shell.context().navigator().show(ScreenId.SETTINGS);
          window.layOut();
          return 0;
        });
    press(window, "About");
    assertThat(words(window)).contains("Wherefrom 1.2.3");
    press(window, "FFmpeg and its parts");
    assertThat(words(window)).contains("Lesser General Public License", "version 3 or later");
    press(window, "Back");
    press(window, "Down");
    assertThat(words(window)).contains("registered trademark");
  }

  private static void press(SampleWindow window, String key) {
    Toolkit.on(
        () -> {
          window.pressOnSomePage(key);
          return 0;
        });
  }

  private static String words(SampleWindow window) {
    return Toolkit.on(window::words);
  }
}
