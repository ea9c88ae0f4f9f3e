package wherefrom.ui.sample;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import wherefrom.files.Outgoing;
import wherefrom.job.OpenJob;
import wherefrom.job.print.PrintOrder;
import wherefrom.job.settings.Settings;
import wherefrom.job.shelf.Shelf;
import wherefrom.ui.Toolkit;
import wherefrom.ui.app.ScreenId;

/**
 * The window, shown, as a keyboard-type scanner works it, over a shelf of the test's own. A robot
 * presses and releases real keys: they reach the focused window by way of the screen's driver. The
 * time between two keys is that of the sample's clock, so that a slow machine loses no scan. Worked
 * from the test's thread, not from the window's.
 */
public final class ScannedWindow implements AutoCloseable {
  private static final long KEY_NANOS = 4_000_000L;
  private static final long AFTER_NANOS = 400_000_000L;

  private final SampleWindow window;
  private final Stage stage;
  private final Robot robot;

  public ScannedWindow(Shelf shelf) {
    this(shelf, Path.of("shop"));
  }

  /**
   * The same.
   *
   * @param folder where the settings say that the shelf lies
   */
  public ScannedWindow(Shelf shelf, Path folder) {
    Settings settings = Settings.fresh(folder).withPixelsPerMm(96 / 25.4);
    window =
        Toolkit.on(
            () ->
                new SampleWindow(
                    96,
                    100,
                    Optional.of(shelf),
                    Runnable::run,
                    services -> services.settings = settings));
    stage = Toolkit.on(window::show);
    robot = Toolkit.on(Robot::new);
  }

  /** Whether the window is on the screen and has the keys. */
  public boolean hasKeys() {
    return Toolkit.on(() -> stage.isShowing() && stage.isFocused());
  }

  public void open(OpenJob job) {
    inWindow(() -> window.shell.context().open(job));
  }

  public void show(ScreenId id) {
    inWindow(
        () -> {
          window.shell.context().navigator().show(id);
          window.layOut();
        });
  }

  /** Types a code as a scanner does, 4 ms a key, and ends it with Enter. */
  public void burst(String code) {
    code.chars().forEach(character -> inWindow(() -> type((char) character)));
    inWindow(() -> key(KeyCode.ENTER));
    inWindow(
        () -> {
          window.nanos.addAndGet(AFTER_NANOS);
          window.layOut();
        });
  }

  private void type(char character) {
    if (character == ':') {
      robot.keyPress(KeyCode.SHIFT);
      key(KeyCode.SEMICOLON);
      robot.keyRelease(KeyCode.SHIFT);
    } else {
      key(code(character));
    }
  }

  private static KeyCode code(char character) {
    return switch (character) {
      case '/' -> KeyCode.SLASH;
      case '.' -> KeyCode.PERIOD;
      default -> {
        String name = Character.toString(Character.toUpperCase(character));
        yield KeyCode.valueOf(Character.isDigit(character) ? "DIGIT" + name : name);
      }
    };
  }

  /** The robot's keys wait in line until this piece of work is over; the next comes after them. */
  private void key(KeyCode code) {
    window.nanos.addAndGet(KEY_NANOS);
    robot.keyPress(code);
    robot.keyRelease(code);
  }

  /** To the job's first screen. */
  public void home() {
    inWindow(() -> window.shell.context().navigator().home());
  }

  public void press(String words) {
    inWindow(() -> window.press(words));
  }

  /** Turns pages until a target's first words are these, and presses it. */
  public void pressOnSomePage(String words) {
    inWindow(() -> window.pressOnSomePage(words));
  }

  /** Whether a target's first words are these. */
  public boolean has(String words) {
    return Toolkit.on(
        () -> window.targets().stream().anyMatch(node -> window.words(node).startsWith(words)));
  }

  /** The job that is open. */
  public OpenJob job() {
    return Toolkit.on(() -> window.shell.context().getJob());
  }

  /** Files that reports were written to. */
  public List<Outgoing> reported() {
    return window.services.reported;
  }

  /** All words on the screen, wrapped lines joined. */
  public String words() {
    return Toolkit.on(window::words);
  }

  public List<PrintOrder> printed() {
    return window.services.printed;
  }

  @Override
  public void close() {
    inWindow(stage::close);
  }

  /** Does this on the window's thread and waits for it; an error comes out as the cause. */
  private static void inWindow(Runnable work) {
    CompletableFuture.runAsync(work, Platform::runLater).orTimeout(60, TimeUnit.SECONDS).join();
  }
}
