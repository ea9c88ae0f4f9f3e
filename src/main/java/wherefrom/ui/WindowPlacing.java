package wherefrom.ui;

import javafx.scene.input.KeyCombination;
import javafx.stage.Screen;
import javafx.stage.Stage;
import wherefrom.job.settings.WindowPlace;

/** Puts the window where it stood last, and tells where it stands. */
final class WindowPlacing {
  private WindowPlacing() {}

  /** A place on a screen that is no longer there is not taken. */
  static void put(Stage stage, WindowPlace place) {
    // Escape is the way back; F11 turns the full screen off.
    stage.setFullScreenExitKeyCombination(KeyCombination.NO_MATCH);
    stage.setFullScreenExitHint("");
    boolean seen =
        !Screen.getScreensForRectangle(place.x(), place.y(), place.width(), place.height())
            .isEmpty();
    if (place.state() == WindowPlace.State.WINDOW && seen) {
      stage.setX(place.x());
      stage.setY(place.y());
      stage.setWidth(place.width());
      stage.setHeight(place.height());
    } else {
      stage.setMaximized(true);
    }
    stage.setFullScreen(place.state() == WindowPlace.State.FULL);
  }

  static WindowPlace of(Stage stage) {
    WindowPlace.State state =
        stage.isFullScreen()
            ? WindowPlace.State.FULL
            : stage.isMaximized() ? WindowPlace.State.MAXIMIZED : WindowPlace.State.WINDOW;
    return new WindowPlace(state, stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight());
  }
}
