package wherefrom.ui;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.logging.Logger;
import javafx.animation.PauseTransition;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import javafx.stage.Stage;
import javafx.util.Duration;
import org.jspecify.annotations.Nullable;
import wherefrom.job.BuiltVersion;
import wherefrom.job.ports.Services;
import wherefrom.job.ports.Sounds;
import wherefrom.ui.app.CueSounds;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.Shell;
import wherefrom.ui.controls.Ticker;
import wherefrom.ui.jobs.BringingBack;

/** Opens the window. */
public final class Start extends Application {
  private static final double WIDTH = 1280;
  private static final double HEIGHT = 800;

  /** The small one is drawn for its size. */
  private static final List<String> ICONS = List.of("icon-16.png", "icon-48.png", "icon-256.png");

  private static final long IDLE_MILLIS = 30_000;

  /** What is being written when the window closes is waited for so long. */
  private static final long WRITING_SECONDS = 60;

  /** By then the list of jobs has been asked for: icons may come, and files of other starts. */
  private static final double SOON_MILLIS = 300;

  /** By then the list of jobs is up. */
  private static final double LATER_MILLIS = 2_000;

  /** Kept, because a logger that nobody holds is forgotten with its filter. */
  private static final Logger JAVAFX = Logger.getLogger("javafx");

  /** All is in one jar, and so on the class path: it works, and the person can do nothing here. */
  private static final String ON_THE_CLASS_PATH = "Unsupported JavaFX configuration";

  private static @Nullable Services services;
  private static LongSupplier nanos = () -> 0;
  private static @Nullable Sounds sounds;
  private static List<Path> exported = List.of();
  private static Runnable listening = () -> {};
  private static Runnable seen = () -> {};
  private static volatile Consumer<List<Path>> front = files -> {};

  private final ExecutorService workers =
      Executors.newCachedThreadPool(
          work -> {
            Thread thread = new Thread(work, "wherefrom-work");
            thread.setDaemon(true);
            return thread;
          });

  private @Nullable Shell shell;
  private @Nullable Stage window;
  private final PauseTransition soon = new PauseTransition(Duration.millis(SOON_MILLIS));
  private final PauseTransition later = new PauseTransition(Duration.millis(LATER_MILLIS));
  private Optional<Ticker.Ticking> firstPicture = Optional.empty();
  private Optional<Ticker.Ticking> idle = Optional.empty();

  /**
   * Opens the window and returns when it is closed.
   *
   * @param steady a steady clock, in nanoseconds
   * @param files exported jobs to bring back; the last of them is opened
   * @param listen is run in the background once files of other starts can be taken
   * @param once is run in the background once the window has been seen for a moment
   */
  public static void run(
      Services all,
      LongSupplier steady,
      Sounds speaker,
      List<Path> files,
      Runnable listen,
      Runnable once) {
    services = all;
    nanos = steady;
    sounds = speaker;
    exported = List.copyOf(files);
    listening = listen;
    seen = once;
    if (!Start.class.getModule().isNamed()) {
      JAVAFX.setFilter(
          logged -> !String.valueOf(logged.getMessage()).startsWith(ON_THE_CLASS_PATH));
    }
    Application.launch(Start.class);
  }

  /** Exported jobs that another start of the program hands over, on any thread. */
  public static void take(List<Path> files) {
    Platform.runLater(() -> front.accept(files));
  }

  private void come(List<Path> files) {
    Stage stage = Objects.requireNonNull(window, "start() first");
    stage.setIconified(false);
    stage.toFront();
    stage.requestFocus();
    new BringingBack(Objects.requireNonNull(shell, "start() first").context()).meanwhile(files);
  }

  @Override
  public void start(Stage stage) {
    Services all = Objects.requireNonNull(services, "run() first");
    Sounds tones = Objects.requireNonNull(sounds, "run() first");
    HeldWork held = new HeldWork(workers);
    CueSounds cues = new CueSounds(tones, Ticker.WINDOW);
    Shell opened = new Shell(Screens.all(), Screens::camera, all, nanos, cues, held);
    shell = opened;
    Scene scene = new Scene(opened, WIDTH, HEIGHT);
    opened.keys().attach(scene);
    // What nobody catches on the window's thread is logged, and the person is told.
    Thread.currentThread()
        .setUncaughtExceptionHandler(
            (thread, fault) -> opened.context().unexpected("Nobody caught this", fault));
    stage.setTitle(BuiltVersion.words());
    stage.setScene(scene);
    WindowPlacing.put(stage, opened.context().settings().window());
    window = stage;
    stage.show();
    front = this::come;
    new BringingBack(opened.context()).all(exported);
    held.execute(
        () -> {
          boolean dark = SystemLook.isDark();
          Platform.runLater(() -> opened.systemLook(dark));
        });
    firstPicture = Optional.of(Ticker.WINDOW.follow(passed -> pictured(passed, held)));
    idle = Optional.of(Ticker.WINDOW.repeat(IDLE_MILLIS, opened.context().copying()::idle));
  }

  /** The second time that it is told, the first picture has been drawn. */
  private void pictured(double passed, HeldWork held) {
    if (passed > 0) {
      firstPicture.ifPresent(Ticker.Ticking::end);
      held.letGo();
      soon.setOnFinished(event -> workers.execute(this::soon));
      soon.play();
      later.setOnFinished(event -> workers.execute(seen));
      later.play();
    }
  }

  private void soon() {
    listening.run();
    putIcons();
  }

  private void putIcons() {
    List<Image> images =
        ICONS.stream()
            .map(file -> Objects.requireNonNull(Start.class.getResource(file)).toExternalForm())
            .map(Image::new)
            .toList();
    Stage stage = Objects.requireNonNull(window, "start() first");
    Platform.runLater(() -> stage.getIcons().setAll(images));
  }

  @Override
  public void stop() {
    firstPicture.ifPresent(Ticker.Ticking::end);
    soon.stop();
    later.stop();
    idle.ifPresent(Ticker.Ticking::end);
    if (shell != null && window != null) {
      end(shell, window);
    }
  }

  /**
   * The job is let go once nothing is written into its folder any more. Whoever writes is not
   * interrupted, nor anybody else: all that is left ends with the program.
   */
  private void end(Shell opened, Stage stage) {
    ScreenContext context = opened.context();
    context.change(context.settings().withWindow(WindowPlacing.of(stage)));
    context.writings().finish(WRITING_SECONDS);
    opened.close();
    workers.shutdown();
  }
}
