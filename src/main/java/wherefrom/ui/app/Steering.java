package wherefrom.ui.app;

import javafx.geometry.Side;
import javafx.scene.input.KeyCode;

/** What the keys of a keyboard do that write nothing: arrows, Escape, F1 and F11. */
final class Steering {
  private final FocusWalk walk;
  private final Runnable back;
  private final Runnable help;
  private final Runnable fullScreen;

  /**
   * @param back does what the key Back does, where there is one
   * @param fullScreen turns the full screen on or off
   */
  Steering(FocusWalk walk, Runnable back, Runnable help, Runnable fullScreen) {
    this.walk = walk;
    this.back = back;
    this.help = help;
    this.fullScreen = fullScreen;
  }

  void press(KeyCode code) {
    switch (code) {
      case LEFT, KP_LEFT -> walk.move(Side.LEFT);
      case RIGHT, KP_RIGHT -> walk.move(Side.RIGHT);
      case UP, KP_UP -> walk.move(Side.TOP);
      case DOWN, KP_DOWN -> walk.move(Side.BOTTOM);
      case ESCAPE -> back.run();
      case F1 -> help.run();
      case F11 -> fullScreen.run();
      default -> {
        // It writes something, or nothing that is known here.
      }
    }
  }
}
