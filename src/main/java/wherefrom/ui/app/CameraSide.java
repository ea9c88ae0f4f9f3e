package wherefrom.ui.app;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Beside;
import wherefrom.ui.controls.Scale;

/**
 * The live camera beside every screen of the job that takes scans. It stays on from screen to
 * screen until the person turns it off; a screen that takes no scans lets the device go meanwhile.
 */
final class CameraSide implements LiveCamera.Listener {
  private static final double PANE_MM = 66;
  private static final double LARGEST_TEXT = 2;

  private final ScreenContext context;
  private final Supplier<Screen> current;
  private final Scans scans;
  private final LiveCamera.Maker maker;
  private final Runnable arrange;
  private Optional<LiveCamera> made = Optional.empty();
  private Consumer<String> brief = words -> {};
  private boolean running;
  private boolean lent;

  /**
   * @param arrange lays the screen that is up out anew, with or without the camera beside it
   */
  CameraSide(
      ScreenContext context,
      Supplier<Screen> current,
      Scans scans,
      LiveCamera.Maker maker,
      Runnable arrange) {
    this.context = context;
    this.current = current;
    this.scans = scans;
    this.maker = maker;
    this.arrange = arrange;
  }

  /** Made when it is first wanted: the window's first picture does without. */
  private LiveCamera camera() {
    LiveCamera camera = made.orElseGet(() -> maker.make(context, this));
    made = Optional.of(camera);
    return camera;
  }

  /** Whether a screen can be worked with the camera. */
  boolean offered(Screen screen) {
    return screen instanceof Scannable && screen.onJob() && context.job().isPresent();
  }

  boolean on() {
    return context.settings().cameraOn();
  }

  private boolean wanted(Screen screen) {
    return on() && !lent && offered(screen);
  }

  /** The screen's contents, with the camera's pane beside them where it is on. */
  Region around(Screen screen) {
    Scale scale = context.scale();
    return wanted(screen)
        ? new Beside(
            screen.view(),
            camera().pane(),
            scale.px(PANE_MM),
            scale.gap(),
            !scale.isLarge() || scale.textFactor() < LARGEST_TEXT)
        : screen.view();
  }

  /** Starts the camera for the screen that is up, or lets it go. */
  void follow() {
    boolean wanted = wanted(current.get());
    if (wanted && !running) {
      running = true;
      camera().start();
    } else if (!wanted) {
      stop();
    }
  }

  void stop() {
    running = false;
    made.ifPresent(LiveCamera::stop);
  }

  /** Turns it on or off. */
  void turn() {
    context.change(context.settings().withCameraOn(!on()));
    arrange.run();
    follow();
  }

  /** Somebody else needs the device for a moment, or has given it back. */
  void lend(boolean away) {
    lent = away;
    arrange.run();
    follow();
  }

  /** Keys and words have another size. */
  void rescale() {
    stop();
    made = Optional.empty();
  }

  /** Where what the camera sees is written while its pane has no room. */
  void writeTo(Consumer<String> line) {
    brief = line;
  }

  @Override
  public void read(String text) {
    scans.hand(text);
  }

  @Override
  public void brief(String words) {
    if (running && !camera().pane().isVisible()) {
      brief.accept(words);
    }
  }

  @Override
  public void failed(String sentence) {
    if (running && !camera().pane().isVisible()) {
      context.say(sentence);
    }
  }

  @Override
  public void ask(String hint) {
    if (current.get() instanceof Watching watching) {
      watching.ask(hint);
    }
  }
}
