package wherefrom.ui.app;

import java.util.Map;
import java.util.concurrent.Executor;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import javafx.scene.layout.StackPane;
import wherefrom.job.ports.Services;
import wherefrom.ui.controls.ScreenAnswer;

/** The window's contents: its frame with the screen that is up, and the way between screens. */
public final class Shell extends StackPane implements WindowFrame {
  private final ScreenContext context;
  private final KeyFilter keys;
  private final PictureDrop pictures;
  private final CameraSide camera;
  private final ScreenPath path;
  private final Message message;
  private final RunningWorks works = new RunningWorks();
  private final FocusWalk walk;
  private final RailKeys railKeys;
  private final Scans scans;
  private final WindowDress dress;
  private final LettersThatFit letters;
  private final UndoGuard undoes;

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
      VerdictSounds sounds,
      Executor workers) {
    this.path =
        new ScreenPath(
            screens,
            this::context,
            new ScreenPath.Window(() -> current().hidden(), this::arrived, this::changed));
    this.context =
        new ScreenContext(services, nanos, sounds, workers, this, path, services.settings().load());
    this.walk = new FocusWalk(this);
    this.undoes = new UndoGuard(context);
    // Each once: every method reference is a class before the first picture.
    Supplier<Screen> up = this::current;
    Runnable help = this::help;
    this.scans = new Scans(context, up, cards(up, help)::take);
    this.keys =
        new KeyFilter(context, up, scans, walk, new Steering(walk, up, path::goBack, help, this));
    this.pictures = new PictureDrop(context, scans);
    pictures.attach(this);
    this.camera = new CameraSide(context, up, scans, cameras, this::arrange);
    this.railKeys = new RailKeys(context, camera, help);
    this.dress =
        new WindowDress(
            this, context, walk, this::rail, this::refit, title -> camera.writeTo(title::aside));
    this.letters = new LettersThatFit(dress, path, this::arrange, this::remakeSmaller);
    this.message = new Message(nanos, dress::title, this::tell);
    listen();
    dress.put();
    path.begin();
    services.settings().faults().stream()
        .reduce((one, other) -> one + " " + other)
        .ifPresent(this::say);
  }

  /** Before each press what was said goes; what the press cannot write is said. */
  private void listen() {
    context.touch().beforeEach(() -> undoes.begin(message));
    context.touch().within(context::guard);
  }

  private ActionCards cards(Supplier<Screen> up, Runnable help) {
    return new ActionCards(context, up, walk, this::takeBack, help, undoes, () -> message.last());
  }

  private Rail rail() {
    return new Rail(
        context.touch(),
        () -> undoes.press(this::takeBack),
        others -> path.open(() -> new RestOfRailScreen(context, others)));
  }

  /**
   * On glass of another size words may have room that had none, or none any more. Only the first
   * screen is made anew for that: on others something may have been done.
   */
  @Override
  protected void layoutChildren() {
    if (path.depth() == 0 && dress.isOutgrown()) {
      rescale();
    }
    super.layoutChildren();
  }

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

  /** Takes a code that was read. */
  public void scan(String text) {
    scans.hand(text);
  }

  /** Reads picture files. */
  public PictureDrop pictures() {
    return pictures;
  }

  /** The screen that is up. */
  public Screen current() {
    return path.current();
  }

  /** The message that is shown; empty when there is none. */
  public String message() {
    return message.shown();
  }

  private void arrived() {
    message.pass();
    up();
  }

  private void help() {
    HelpScreen.Told told = HelpScreen.told(current(), message.last());
    path.open(() -> new HelpScreen(context, told, scans::handBack));
    message.move(); // It stands on the page.
  }

  private void up() {
    walk.arrive(current());
    if (dress.letters() != path.set()) {
      dress.reframe(path.set());
    }
    context.letters().use(path.touch());
    context.touch().settle();
    undoes.up(current());
    arrange();
    Screen screen = current();
    screen.shown();
    if (screen.equals(current())) {
      arrange();
      camera.follow();
      refit();
    }
  }

  private void refit() {
    letters.fit();
    if (dress.isStale()) {
      label();
    }
  }

  private void remakeSmaller() {
    current().hidden();
    path.remakeSmaller();
    up();
  }

  private void arrange() {
    dress.frame().show(camera.around(current()), WholeGlass.is(current()));
    tell();
    label();
  }

  /** On the whole glass no row is left for the message: the screen has a place for it. */
  private void tell() {
    if (current() instanceof WholeGlass glass && glass.whole()) {
      glass.message(message.shown());
    }
  }

  private void label() {
    dress.label(current(), path.depth(), railKeys, works);
  }

  @Override
  public void lendCamera(boolean away) {
    camera.lend(away);
  }

  /** Lets the camera and the job go: the window closes. */
  public void close() {
    current().hidden();
    camera.stop();
    context.closeJob();
    context.copying().finish();
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
    if (!dress.isJobGone(current())) {
      current().copied();
    }
  }

  private void changed() {
    if (dress.isJobGone(current())) {
      return;
    }
    letters.renew();
    current().changed();
    walk.follow(current());
    if (WholeGlass.is(current()) != dress.frame().isWhole()) {
      arrange();
    } else {
      label();
    }
    refit();
  }

  private void takeBack() {
    context.guard(() -> current().undo(context));
    context.touch().once();
    changed();
  }

  @Override
  public void say(String sentence) {
    message.say(sentence);
    label();
  }

  @Override
  public void superseded() {
    undoes.begin();
    walk.disarm();
    message.drop();
  }

  @Override
  public void jobChanged() {
    message.forget();
  }

  @Override
  public void refuse(ScreenAnswer answer) {
    // The screen that is left hushes: the cue sounds after it.
    path.open(() -> new RefusedScreen(context, answer, scans::handBack));
    answer.cue().ifPresent(context.sounds()::play);
  }

  @Override
  public void rescale() {
    current().hidden();
    camera.rescale();
    listen();
    dress.reframe(path.set());
    path.remake();
  }

  @Override
  public void expectSetUpCard(boolean expected) {
    keys.expectSetUpCard(expected);
  }

  @Override
  public void scannerChanged() {
    keys.setUp();
  }
}
