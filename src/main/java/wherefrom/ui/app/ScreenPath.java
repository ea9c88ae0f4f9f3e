package wherefrom.ui.app;

import java.util.Map;
import java.util.function.Supplier;
import wherefrom.ui.controls.Touch;

/** The way between the screens: the one that is up is left, then the next is made and drawn. */
final class ScreenPath implements Navigator {
  /** Between the usual size of letters and twice that. */
  private static final double MIDDLE = 1.5;

  /**
   * Draws the screens.
   *
   * @param leave the screen that is up goes
   * @param arrive another screen has come up
   * @param redraw the job has changed under the screen that is up
   */
  record Window(Runnable leave, Runnable arrive, Runnable redraw) {}

  private final Map<ScreenId, ScreenMaker> screens;
  private final Supplier<ScreenContext> context;
  private final Window window;
  private final ScreenStack stack = new ScreenStack();
  private boolean fresh;
  private boolean shrunk;

  /**
   * @param context what the screens work with, once there is one
   */
  ScreenPath(Map<ScreenId, ScreenMaker> screens, Supplier<ScreenContext> context, Window window) {
    this.screens = Map.copyOf(screens);
    this.context = context;
    this.window = window;
  }

  /** Comes up with the list of jobs. */
  void begin() {
    push(maker(ScreenId.JOBS, 0));
  }

  @Override
  public Screen current() {
    return stack.current();
  }

  @Override
  public boolean isUp(Screen screen) {
    return stack.isUp(screen);
  }

  /** How many screens lie below the one that is up. */
  int depth() {
    return stack.depth();
  }

  /** The size of the letters on the screen that is up, as a factor. */
  double letters() {
    return touch().scale().textFactor();
  }

  /** What the screen that is up was made with. */
  Touch touch() {
    return stack.touch();
  }

  /** Whether the screen that is up was just made, so that nothing is lost by making it anew. */
  boolean isFresh() {
    return fresh;
  }

  /** Whether its letters have become smaller where they stand. */
  boolean isShrunk() {
    return shrunk;
  }

  /** The size of letters that the person has set, as a factor. */
  double set() {
    return context.get().settings().textPercent() / 100.0;
  }

  private double nextSmaller() {
    return letters() > MIDDLE ? MIDDLE : 1;
  }

  /**
   * Makes the screen that is up once more: with brief words, then with the next smaller letters.
   */
  void remakeSmaller() {
    GlassLetters next = context.get().letters();
    boolean whole = letters() > 1 && !touch().isLarge();
    stack.remakeTop(whole ? next.brief() : next.next(nextSmaller()));
    shrunk = false;
  }

  /** Makes the letters of the screen that is up smaller; all that was done on it stays. */
  void shrink() {
    touch().setText(nextSmaller());
    shrunk = true;
  }

  /** Gives the screen that is up letters of the size that is set; all that was done on it stays. */
  void grow() {
    touch().setText(set());
    shrunk = false;
  }

  /** Makes all screens again in letters of the size that is set. */
  void remake() {
    stack.remake(() -> context.get().letters().next(set()));
    arriveFresh();
  }

  private void arriveFresh() {
    fresh = true;
    arrive();
    fresh = false;
  }

  private void arrive() {
    shrunk = false;
    window.arrive().run();
  }

  private Supplier<Screen> maker(ScreenId id, int item) {
    ScreenMaker maker = screens.get(id);
    if (maker == null) {
      throw new IllegalStateException("no such screen: " + id);
    }
    return () -> maker.make(context.get(), item);
  }

  private void push(Supplier<? extends Screen> maker) {
    stack.push(maker, context.get().letters().next(set()));
    arriveFresh();
  }

  @Override
  public void show(ScreenId id) {
    show(id, 0);
  }

  @Override
  public void show(ScreenId id, int item) {
    open(maker(id, item));
  }

  @Override
  public void open(Supplier<? extends Screen> maker) {
    window.leave().run();
    push(maker);
  }

  @Override
  public void back() {
    if (depth() > 0) {
      window.leave().run();
      stack.pop();
      arrive();
    }
  }

  @Override
  public void goBack() {
    if (depth() > 0) {
      window.leave().run();
      stack.popLoop();
      arrive();
    }
  }

  @Override
  public void backTo(Screen screen) {
    if (!stack.isUp(screen)) {
      window.leave().run();
      stack.popTo(screen);
      arrive();
    }
  }

  /** Leaves the list of jobs alone where a job's first screen comes on top of it. */
  @Override
  public void home() {
    boolean job = context.get().job().isPresent();
    window.leave().run();
    stack.keep(job ? 1 : 0);
    push(maker(job ? ScreenId.JOB_HOME : ScreenId.JOBS, 0));
  }

  @Override
  public void jobs() {
    context.get().closeJob();
    home();
  }

  @Override
  public void changed() {
    window.redraw().run();
  }
}
