package wherefrom.ui.app;

import javafx.scene.Parent;
import wherefrom.job.settings.Appearance;

/** Gives a window light or dark colors. */
final class WindowLook {
  private static final String DARK = "dark";

  private WindowLook() {}

  /**
   * @param systemDark whether the system is set to dark colors
   */
  static void put(Parent window, Appearance chosen, boolean systemDark) {
    window.getStyleClass().remove(DARK);
    if (chosen == Appearance.DARK || (chosen == Appearance.SYSTEM && systemDark)) {
      window.getStyleClass().add(DARK);
    }
  }
}
