package wherefrom.ui;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/**
 * Asks the system whether it is set to dark colors, with the command that each system has for it.
 * This JavaFX cannot tell; where there is no such command or no answer, it is taken to be light.
 */
final class SystemLook {
  private static final long WAIT_SECONDS = 3;

  private SystemLook() {}

  /** Takes a moment: not for the window's thread. */
  static boolean isDark() {
    String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
    if (system.startsWith("windows")) {
      return answer(
              "reg",
              "query",
              "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize",
              "/v",
              "AppsUseLightTheme")
          .contains("0x0");
    }
    if (system.startsWith("mac")) {
      return answer("defaults", "read", "-g", "AppleInterfaceStyle").contains("Dark");
    }
    return answer("gsettings", "get", "org.gnome.desktop.interface", "color-scheme")
        .contains("dark");
  }

  private static String answer(String... command) {
    try {
      Process asked =
          new ProcessBuilder(List.of(command))
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      asked.getOutputStream().close();
      String said = new String(asked.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return asked.waitFor(WAIT_SECONDS, TimeUnit.SECONDS) ? said : "";
    } catch (IOException e) {
      return "";
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return "";
    }
  }
}
