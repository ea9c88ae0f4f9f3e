package wherefrom.ui;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.input.KeyCombination;
import javafx.stage.Screen;
import javafx.stage.Stage;
import wherefrom.job.settings.ScreenArea;
import wherefrom.job.settings.WindowPlace;

/** Puts the window where it stood last, and tells where it stands. */
final class WindowPlacing {
  private WindowPlacing() {}

  /** A place on a screen that is no longer there, or is smaller now, is fitted to what there is. */
  static void put(Stage stage, WindowPlace place) {
    // Escape is the way back; F11 turns the full screen off.
    stage.setFullScreenExitKeyCombination(KeyCombination.NO_MATCH);
    stage.setFullScreenExitHint("");
    if (place.state() == WindowPlace.State.WINDOW) {
      WindowPlace fitted = place.on(screens());
      stage.setX(fitted.x());
      stage.setY(fitted.y());
      stage.setWidth(fitted.width());
      stage.setHeight(fitted.height());
    } else {
      stage.setMaximized(true);
    }
    stage.setFullScreen(place.state() == WindowPlace.State.FULL);
  }

  /** The first one first, without the system's bars. */
  private static List<ScreenArea> screens() {
    Screen first = Screen.getPrimary();
    return Stream.concat(
            Stream.of(first), Screen.getScreens().stream().filter(screen -> !screen.equals(first)))
        .map(Screen::getVisualBounds)
        .map(it -> new ScreenArea(it.getMinX(), it.getMinY(), it.getWidth(), it.getHeight()))
        .toList();
  }

  static WindowPlace of(Stage stage) {
    WindowPlace.State state =
        stage.isFullScreen()
            ? WindowPlace.State.FULL
            : stage.isMaximized() ? WindowPlace.State.MAXIMIZED : WindowPlace.State.WINDOW;
    return new WindowPlace(state, stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight());
  }
}
