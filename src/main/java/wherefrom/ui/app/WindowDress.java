package wherefrom.ui.app;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.layout.Pane;
import wherefrom.job.OpenJob;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/** The frame round the screen in the letters and colors that the settings say. */
final class WindowDress {
  private static final String LOOKS = "/wherefrom/ui/wherefrom.css";

  private final Pane window;
  private final ScreenContext context;
  private final FocusWalk walk;
  private final Supplier<Rail> rails;
  private final Runnable resized;
  private final Consumer<TitleRow> told;
  private TitleRow title;
  private Rail rail;
  private Frame frame;
  private double letters;
  private boolean large;
  private boolean systemDark;
  private boolean toldCut;

  /**
   * @param window holds the frame
   * @param rails makes the rail in the letters of the moment
   * @param resized is run after the window got another size
   * @param told is given each title row that the frame has
   */
  WindowDress(
      Pane window,
      ScreenContext context,
      FocusWalk walk,
      Supplier<Rail> rails,
      Runnable resized,
      Consumer<TitleRow> told) {
    this.window = window;
    this.context = context;
    this.walk = walk;
    this.rails = rails;
    this.resized = resized;
    this.told = told;
    window.getStyleClass().add("bench");
    window
        .getStylesheets()
        .add(Objects.requireNonNull(WindowDress.class.getResource(LOOKS)).toExternalForm());
    letters = context.scale().textFactor();
    large = isLarge();
    title = new TitleRow(context.touch());
    rail = rails.get();
    frame = new Frame(context.touch(), rail, title);
    context.corner(rail);
  }

  TitleRow title() {
    return title;
  }

  Frame frame() {
    return frame;
  }

  /** The size of the frame's own letters, as a factor. */
  double letters() {
    return letters;
  }

  /**
   * Whether the letters that are set are large for the glass where they were not, or the reverse.
   */
  boolean isOutgrown() {
    return isLarge() != large;
  }

  private boolean isLarge() {
    return Scale.of(context.settings()).on(window.getWidth(), window.getHeight()).isLarge();
  }

  /** Puts the frame into the window. */
  void put() {
    told.accept(title);
    look();
    window.getChildren().setAll(frame, walk.ring());
    frame.onResized(() -> Platform.runLater(resized));
  }

  /** The frame with letters of another size; what it says stays. */
  void reframe(double factor) {
    String said = title.said();
    Touch before = context.touch();
    context.letters().next(factor);
    letters = factor;
    large = isLarge();
    title = new TitleRow(context.touch());
    rail = rails.get();
    frame = new Frame(context.touch(), rail, title);
    context.corner(rail);
    put();
    frame.resize(window.getWidth(), window.getHeight());
    title.say(said);
    context.letters().use(before);
  }

  /** Takes the colors that the settings say. */
  void look() {
    WindowLook.put(window, context.settings().look(), systemDark);
  }

  /** Says whether the system is set to dark colors. */
  void systemLook(boolean dark) {
    systemDark = dark;
    look();
  }

  /** Whether the job is being put away under the screen: it has nothing to draw any more. */
  boolean isJobGone(Screen screen) {
    return screen.onJob() && context.job().isEmpty();
  }

  /** What stands round the screen, as things are now. */
  void label(Screen screen, int depth, RailKeys keys, RunningWorks works) {
    if (isJobGone(screen)) {
      return;
    }
    boolean onJob = screen.onJob();
    title.show(screen.title(), onJob && screen.aside().isEmpty() ? name() : screen.aside());
    title.work(works.newest());
    toldCut = title.isCut();
    rail.show(
        keys.of(screen, depth),
        keys.beside(screen, toldCut, works.stoppable()),
        onJob ? Optional.of(screen.undoes(context)) : Optional.empty());
  }

  /** Whether the message has another room than when the keys were told of it. */
  boolean isStale() {
    return toldCut != title.isCut();
  }

  private String name() {
    OpenJob open = context.getJob();
    return open.condition().writable() ? open.state().name() : "for reading only";
  }
}
