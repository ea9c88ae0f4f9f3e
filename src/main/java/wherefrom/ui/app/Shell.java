package wherefrom.ui.app;

import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import javafx.scene.layout.StackPane;
import wherefrom.job.ports.Services;
import wherefrom.ui.controls.ScreenAnswer;

/** The window's contents: its frame with the screen that is up, and the way between screens. */
public final class Shell extends StackPane implements WindowFrame {
  /** Nobody has read a sentence so soon: it may well be about the way to the next screen. */
  private static final long UNREAD_NANOS = 1_000_000_000L;

  /** Between the usual size of letters and twice that. */
  private static final double MIDDLE = 1.5;

  private final Map<ScreenId, ScreenMaker> screens;
  private final ScreenContext context;
  private final KeyFilter keys;
  private final PictureDrop pictures;
  private final CameraSide camera;
  private final ScreenStack stack = new ScreenStack();
  private final RunningWorks works = new RunningWorks();
  private final FocusWalk walk;
  private final RailKeys railKeys;
  private final Scans scans;
  private final WindowDress dress;
  private String saidLast = "";
  private long saidAt;

  /**
   * Opens the list of jobs.
   *
   * @param cameras makes the camera's pane beside the work
   * @param workers does slow work away from the window's thread
   */
  public Shell(
      Map<ScreenId, ScreenMaker> screens,
      LiveCamera.Maker cameras,
      Services services,
      LongSupplier nanos,
      Sounds sounds,
      Executor workers) {
    this.screens = Map.copyOf(screens);
    this.context =
        new ScreenContext(services, nanos, sounds, workers, this, services.settings().load());
    this.scans = new Scans(context, this::current, this::help);
    this.walk = new FocusWalk(this);
    Steering steering = new Steering(walk, this::current, this::back, this::help, this);
    this.keys = new KeyFilter(context, this::current, scans, walk, steering);
    this.pictures = new PictureDrop(context, scans);
    pictures.attach(this);
    this.camera = new CameraSide(context, this::current, scans, cameras);
    this.railKeys = new RailKeys(context, camera, this::turnCamera, this::help);
    this.dress = new WindowDress(this, context, walk, this::rail, this::refit);
    context.touch().beforeEach(this::turned);
    dress.put(this::told);
    push(maker(ScreenId.JOBS, 0));
    List<String> faults = services.settings().faults();
    if (!faults.isEmpty()) {
      say(String.join(" ", faults));
    }
  }

  private Rail rail() {
    return new Rail(
        context.touch(), this::undo, others -> open(() -> new RestOfRailScreen(context, others)));
  }

  private void told(TitleRow title) {
    camera.writeTo(title::aside);
  }

  /** Takes the colors that the settings say. */
  @Override
  public void look() {
    dress.look();
  }

  /** Says whether the system is set to dark colors. */
  public void systemLook(boolean dark) {
    dress.systemLook(dark);
  }

  public ScreenContext context() {
    return context;
  }

  /** Takes the keys of the window. */
  public KeyFilter keys() {
    return keys;
  }

  /** Reads picture files. */
  public PictureDrop pictures() {
    return pictures;
  }

  @Override
  public Screen current() {
    return stack.current();
  }

  /** The message that is shown; empty when there is none. */
  public String message() {
    return dress.title().said();
  }

  private Supplier<Screen> maker(ScreenId id, int item) {
    ScreenMaker maker = screens.get(id);
    if (maker == null) {
      throw new IllegalStateException("no such screen: " + id);
    }
    return () -> maker.make(context, item);
  }

  private void push(Supplier<? extends Screen> maker) {
    context.letters(set());
    stack.push(maker, set());
    turned();
    up();
  }

  /** The size of letters that the person has set, as a factor. */
  private double set() {
    return context.settings().textPercent() / 100.0;
  }

  /** A sentence is about what was done last, on the screen on which it came up. */
  private void turned() {
    boolean unread = !message().isEmpty() && context.nanos().getAsLong() - saidAt < UNREAD_NANOS;
    if (!unread) {
      dress.title().say("");
    }
  }

  private void help() {
    Screen about = current();
    String said = saidLast;
    open(() -> new HelpScreen(context, about, said, this::scanAgain));
  }

  private void up() {
    walk.forget();
    if (dress.letters() != set()) {
      dress.reframe(set(), this::told);
    }
    context.letters(stack.letters());
    context.touch().settle();
    arrange();
    Screen screen = current();
    screen.shown();
    if (screen.equals(current())) {
      arrange();
      camera.follow();
      refit();
    }
  }

  /**
   * A screen that has no room for letters of the size that is set gets the next smaller ones, so
   * that nothing of it is cut.
   */
  private void refit() {
    double letters = stack.letters();
    if (letters > 1 && !dress.frame().fits()) {
      double smaller = letters > MIDDLE ? MIDDLE : 1;
      down();
      context.letters(smaller);
      stack.remakeTop(smaller);
      up();
    } else if (dress.letters() > 1 && !dress.frame().fits()) {
      dress.reframe(1, this::told);
      arrange();
    }
  }

  private void arrange() {
    dress.frame().show(camera.around(current()), current().whole());
    label();
  }

  private void label() {
    dress.label(current(), stack.depth(), railKeys, works);
  }

  private void turnCamera() {
    camera.toggle();
    arrange();
    camera.follow();
  }

  @Override
  public void lendCamera(boolean away) {
    camera.lend(away);
    arrange();
    camera.follow();
  }

  /** Lets the camera and the job go: the window closes. */
  public void close() {
    down();
    camera.stop();
    context.closeJob();
    context.copying().finish();
  }

  /** To be called every now and then: nobody may have worked for a while. */
  public void idle() {
    context.copying().idle();
  }

  @Override
  public void working(LongWork work) {
    boolean offered = works.stoppable().isPresent();
    works.follow(work);
    dress.title().work(works.newest());
    if (offered != works.stoppable().isPresent()) {
      label();
      context.touch().settle();
    }
  }

  @Override
  public void ended(LongWork work) {
    works.end(work);
    label();
  }

  @Override
  public void copied() {
    current().copied();
  }

  private void down() {
    current().hidden();
  }

  @Override
  public void show(ScreenId id) {
    show(id, 0);
  }

  @Override
  public void show(ScreenId id, int item) {
    down();
    push(maker(id, item));
  }

  @Override
  public void open(Supplier<? extends Screen> maker) {
    down();
    push(maker);
  }

  @Override
  public void back() {
    if (stack.depth() > 0) {
      down();
      stack.pop();
      turned();
      up();
    }
  }

  @Override
  public void backTo(Screen screen) {
    if (!current().equals(screen)) {
      down();
      stack.popTo(screen);
      turned();
      up();
    }
  }

  /** Leaves the list of jobs alone where a job's first screen comes on top of it. */
  @Override
  public void home() {
    down();
    stack.keep(context.job().isPresent() ? 1 : 0);
    push(maker(context.job().isPresent() ? ScreenId.JOB_HOME : ScreenId.JOBS, 0));
  }

  @Override
  public void jobs() {
    context.closeJob();
    home();
  }

  @Override
  public void changed() {
    current().changed();
    if (current().whole() != dress.frame().isWhole()) {
      arrange();
    } else {
      label();
    }
  }

  private void undo() {
    current().undo(context);
    context.touch().once();
    changed();
  }

  @Override
  public void say(String sentence) {
    saidAt = context.nanos().getAsLong();
    saidLast = sentence;
    dress.title().say(sentence);
    label();
  }

  @Override
  public void superseded() {
    dress.title().say("");
  }

  @Override
  public void refuse(ScreenAnswer answer) {
    answer.cue().ifPresent(context.sounds()::play);
    open(() -> new RefusedScreen(context, answer, this::scanAgain));
  }

  /** The next scan is the business of the screen that was up before the refusal. */
  private void scanAgain(String text) {
    back();
    scans.hand(text);
  }

  @Override
  public void rescale() {
    down();
    camera.rescale();
    context.touch().beforeEach(this::turned);
    dress.reframe(set(), this::told);
    stack.remake(set());
    up();
  }

  @Override
  public void expectSetUpCard() {
    keys.expectSetUpCard();
  }

  @Override
  public void scannerChanged() {
    keys.setUp();
  }
}
