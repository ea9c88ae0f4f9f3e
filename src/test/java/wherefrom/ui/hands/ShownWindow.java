package wherefrom.ui.hands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import wherefrom.engine.Spots;
import wherefrom.job.OpenJob;
import wherefrom.job.image.Camera;
import wherefrom.job.settings.Settings;
import wherefrom.job.tags.TagBook;
import wherefrom.logbook.FileShelf;
import wherefrom.logbook.PhotoFiles;
import wherefrom.parts.Place;
import wherefrom.parts.TagCode;
import wherefrom.ui.Toolkit;
import wherefrom.ui.home.JobHomeScreen;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/**
 * The window on the screen, over a shelf of real files, real sheets and real photographs. Keys come
 * to its scene one by one, a finger comes from a robot; the clock is the test's, so that nobody
 * waits. Worked from the test's thread.
 */
final class ShownWindow implements AutoCloseable {
  private final SampleWindow window;
  private final FilePrinter printer;
  private final Stage stage;
  private final Robot robot;

  ShownWindow(Path folder) {
    SplittableRandom random = new SplittableRandom(20260504);
    FileShelf shelf = new FileShelf(folder, SampleJob.CLOCK, random::nextInt);
    printer = new FilePrinter(folder);
    window =
        Toolkit.on(
            () ->
                new SampleWindow(
                    96,
                    100,
                    Optional.of(shelf),
                    Runnable::run,
                    services -> {
                      services.settings =
                          Settings.fresh(folder).withPixelsPerMm(Glass.GUESSED.pixelsPerMm());
                      services.ownPrinter = Optional.of(printer);
                      services.ownPhotos = Optional.of(new PhotoFiles());
                      services.cameras.add(new Camera("bench", "Bench camera"));
                    }));
    stage = Toolkit.on(window::show);
    robot = Toolkit.on(Robot::new);
  }

  List<Path> sheets() {
    return printer.sheets();
  }

  OpenJob job() {
    return look(() -> window.shell.context().getJob());
  }

  String title() {
    return look(() -> window.shell.current().title());
  }

  boolean isHome() {
    return look(() -> window.shell.current() instanceof JobHomeScreen);
  }

  String message() {
    return look(() -> window.shell.message());
  }

  String words() {
    return look(window::words).replace('\u00a0', ' ');
  }

  String words(Node node) {
    return window.words(node).replace('\u00a0', ' ').strip();
  }

  /** The digits of a part's tag, by its home's key. */
  String tag(Place home) {
    return book().of(job().state().findOwner(home).orElseThrow()).digits();
  }

  /** The digits of a spot's place card. */
  String card(String spot) {
    return book().of(Spots.find(spot).orElseThrow()).digits();
  }

  /** The six digits under a symbol. */
  String typed(String digits) {
    return TagCode.find(digits).orElseThrow().typed().replace(" ", "");
  }

  private TagBook book() {
    return new TagBook(job().state(), engine -> Optional.empty());
  }

  /** Asks on the window's thread. */
  <T> T look(Supplier<T> question) {
    return Toolkit.on(question::get);
  }

  /** Does something on the window's thread and lets what it began come to its end. */
  void act(Runnable deed) {
    Toolkit.on(
        () -> {
          deed.run();
          return true;
        });
    Toolkit.on(
        () -> {
          window.layOut();
          return true;
        });
  }

  /** All that can be pressed, laid out. */
  List<Node> targets() {
    return new ArrayList<>(window.targets());
  }

  /** The key that has the ring, where one is seen. On the window's thread. */
  Optional<Node> ringed() {
    boolean seen = window.shell.lookupAll(".focus-ring").stream().anyMatch(Node::isVisible);
    return Optional.ofNullable(window.scene.getFocusOwner()).filter(owner -> seen);
  }

  /** A finger comes down on the middle of a key and goes. */
  void touch(Node target) {
    act(
        () -> {
          window.moment();
          Point2D at =
              target.localToScreen(
                  target.getLayoutBounds().getCenterX(), target.getLayoutBounds().getCenterY());
          robot.mouseMove(at);
          robot.mousePress(MouseButton.PRIMARY);
          robot.mouseRelease(MouseButton.PRIMARY);
        });
  }

  /** Time passes. On the window's thread. */
  void pass(long nanos) {
    window.nanos.addAndGet(nanos);
  }

  /** A key goes down and up, this long after the last. On the window's thread. */
  void key(KeyCode code, String typed, boolean shift, long nanos) {
    window.nanos.addAndGet(nanos);
    fire(KeyEvent.KEY_PRESSED, "", code, shift);
    if (!typed.isEmpty()) {
      fire(KeyEvent.KEY_TYPED, typed, KeyCode.UNDEFINED, shift);
    }
    fire(KeyEvent.KEY_RELEASED, "", code, shift);
  }

  private void fire(EventType<KeyEvent> type, String character, KeyCode code, boolean shift) {
    Event.fireEvent(
        window.scene, new KeyEvent(type, character, "", code, shift, false, false, false));
  }

  @Override
  public void close() {
    act(
        () -> {
          window.shell.close();
          stage.close();
        });
  }
}
