package wherefrom.ui.app;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.Side;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import wherefrom.ui.controls.Pager;

/** What the keys of a keyboard do that write nothing: arrows, Home, End, Escape, F1 and F11. */
final class Steering {
  private final FocusWalk walk;
  private final Supplier<Screen> current;
  private final Runnable back;
  private final Runnable help;
  private final Parent window;

  /**
   * @param back does what the key Back does
   * @param help shows what to do now
   */
  Steering(FocusWalk walk, Supplier<Screen> current, Runnable back, Runnable help, Parent window) {
    this.walk = walk;
    this.current = current;
    this.back = back;
    this.help = help;
    this.window = window;
  }

  void press(KeyCode code) {
    switch (code) {
      case LEFT, KP_LEFT -> walk.move(Side.LEFT);
      case RIGHT, KP_RIGHT -> walk.move(Side.RIGHT);
      case UP, KP_UP -> walk.move(Side.TOP);
      case DOWN, KP_DOWN -> walk.move(Side.BOTTOM);
      case PAGE_UP -> turn(Pager.Turn.BACK);
      case PAGE_DOWN -> turn(Pager.Turn.ON);
      case HOME -> turn(Pager.Turn.FIRST);
      case END -> turn(Pager.Turn.LAST);
      case ESCAPE -> escape();
      case F1 -> help();
      case F11 -> fullScreen();
      default -> {
        // It writes something, or nothing that is known here.
      }
    }
  }

  private void turn(Pager.Turn way) {
    findList(window).ifPresent(list -> list.turn(way));
  }

  /** The list of the screen that is up, if it has one. */
  private static Optional<Pager<?>> findList(Node node) {
    if (!node.isVisible() || !(node instanceof Parent parent)) {
      return Optional.empty();
    }
    return node instanceof Pager<?> list
        ? Optional.of(list)
        : parent.getChildrenUnmodifiable().stream()
            .flatMap(child -> findList(child).stream())
            .findFirst();
  }

  /** On a stop there is no way back but the ways out of it, which it shows. */
  private void escape() {
    Screen screen = current.get();
    boolean closed = WholeGlass.is(screen) && !(screen instanceof Typable);
    if (!screen.escape() && !closed) {
      back.run();
    }
  }

  private void help() {
    if (!(current.get() instanceof HelpScreen)) {
      help.run();
    }
  }

  private void fullScreen() {
    if (window.getScene().getWindow() instanceof Stage stage) {
      stage.setFullScreen(!stage.isFullScreen());
    }
  }
}
