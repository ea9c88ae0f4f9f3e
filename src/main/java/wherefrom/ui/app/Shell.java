package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import javafx.scene.layout.VBox;
import wherefrom.job.ports.Equipment;
import wherefrom.ui.controls.Answer;
import wherefrom.ui.controls.MessageBand;
import wherefrom.ui.controls.Panes;

/** The window's frame: top bar with its place for messages, the screen, the way between screens. */
public final class Shell extends VBox implements Front {
  private static final String LOOKS = "/wherefrom/ui/wherefrom.css";

  /** Nobody has read a sentence so soon: it may well be about the way to the next screen. */
  private static final long UNREAD_NANOS = 1_000_000_000L;

  private record Stop(Supplier<? extends Screen> maker, Screen screen) {}

  private final Map<ScreenId, ScreenMaker> screens;
  private final Desk desk;
  private final KeyFilter keys;
  private final PictureDrop pictures;
  private final CameraSide camera;
  private final List<Stop> stack = new ArrayList<>();
  private final Scans scans;
  private TopBar bar;
  private final List<WorkBand> works = new ArrayList<>();
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
      Equipment equipment,
      LongSupplier nanos,
      Sounds sounds,
      Executor workers) {
    this.screens = Map.copyOf(screens);
    this.desk = new Desk(equipment, nanos, sounds, workers, this, equipment.settings().load());
    this.scans = new Scans(desk, this::current);
    this.keys = new KeyFilter(desk, this::current, scans);
    this.pictures = new PictureDrop(desk, scans);
    pictures.attach(this);
    this.camera = new CameraSide(desk, this::current, scans, cameras);
    this.bar = bar();
    getStyleClass().add("bench");
    getStylesheets().add(looks());
    push(maker(ScreenId.JOBS, 0));
    List<String> faults = equipment.settings().faults();
    if (!faults.isEmpty()) {
      say(String.join(" ", faults));
    }
  }

  private static String looks() {
    return Objects.requireNonNull(Shell.class.getResource(LOOKS)).toExternalForm();
  }

  public Desk desk() {
    return desk;
  }

  /** Takes the keys of the window. */
  public KeyFilter keys() {
    return keys;
  }

  /** Reads picture files. */
  public PictureDrop pictures() {
    return pictures;
  }

  /** The screen that is up. */
  public Screen current() {
    return stack.get(stack.size() - 1).screen();
  }

  /** What the message band says; empty when nothing. */
  public String message() {
    return bar.message().words();
  }

  private Supplier<Screen> maker(ScreenId id, int item) {
    ScreenMaker maker = screens.get(id);
    if (maker == null) {
      throw new IllegalStateException("no such screen: " + id);
    }
    return () -> maker.make(desk, item);
  }

  private void push(Supplier<? extends Screen> maker) {
    stack.add(new Stop(maker, maker.get()));
    turned();
    up();
  }

  /** A sentence is about what was done last, on the screen on which it came up. */
  private void turned() {
    boolean unread = !message().isEmpty() && desk.nanos().getAsLong() - saidAt < UNREAD_NANOS;
    if (!unread) {
      bar.message().clear();
    }
  }

  private TopBar bar() {
    desk.touch().beforeEach(this::turned);
    MessageBand message = new MessageBand(desk.touch(), this::read);
    return new TopBar(desk, camera, this::undo, this::turnCamera, message);
  }

  /** A sentence that is too long for its place has a page. */
  private void read(String sentence) {
    open(() -> new MessageScreen(desk, sentence));
  }

  private void up() {
    arrange();
    Panes.pad(this, 4, desk.scale());
    setSpacing(desk.scale().gap());
    desk.touch().settle();
    Screen screen = current();
    screen.shown();
    if (screen.equals(current())) {
      camera.follow();
    }
  }

  private void arrange() {
    getChildren().setAll(bar, Panes.grow(camera.around(current())));
    // The newest alone: with large letters there is room for no more.
    works.stream().skip(Math.max(0, works.size() - 1)).forEach(getChildren()::add);
    bar.show(current(), stack.size() - 1);
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
    camera.stop();
    desk.closeJob();
    desk.copying().finish();
  }

  /** To be called every now and then: nobody may have worked for a while. */
  public void idle() {
    desk.copying().idle();
  }

  @Override
  public void working(LongWork work) {
    if (work.isEnded()) {
      return;
    }
    Optional<WorkBand> shown = works.stream().filter(each -> each.work().equals(work)).findFirst();
    if (shown.isPresent()) {
      shown.get().follow();
    } else {
      works.add(new WorkBand(work, desk.touch()));
      makeRoom();
    }
  }

  @Override
  public void ended(LongWork work) {
    work.end();
    if (works.removeIf(each -> each.work().equals(work))) {
      makeRoom();
    }
  }

  /** A bar that comes or goes moves the keys: a finger on its way meets none of them. */
  private void makeRoom() {
    arrange();
    desk.touch().settle();
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
    if (stack.size() > 1) {
      down();
      stack.remove(stack.size() - 1);
      turned();
      up();
    }
  }

  @Override
  public void home() {
    jobsBelow();
    if (desk.job().isPresent()) {
      push(maker(ScreenId.JOB_HOME, 0));
    } else {
      push(maker(ScreenId.JOBS, 0));
    }
  }

  @Override
  public void jobs() {
    desk.closeJob();
    home();
  }

  /** Leaves the list of jobs alone on the stack where a job's first screen comes on top of it. */
  private void jobsBelow() {
    down();
    if (desk.job().isPresent()) {
      stack.subList(1, stack.size()).clear();
    } else {
      stack.clear();
    }
  }

  @Override
  public void changed() {
    bar.show(current(), stack.size() - 1);
    current().changed();
  }

  /** Where large text leaves no room beside the key to say what it takes back, it asks first. */
  private void undo() {
    Screen screen = current();
    if (desk.touch().isLarge()) {
      open(() -> UndoAsking.of(desk, screen.undoes(desk), () -> undo(screen)));
    } else {
      undo(screen);
    }
  }

  private void undo(Screen screen) {
    screen.undo(desk);
    desk.touch().once();
    changed();
  }

  @Override
  public void say(String sentence) {
    saidAt = desk.nanos().getAsLong();
    bar.message().say(sentence);
  }

  @Override
  public void superseded() {
    bar.message().clear();
  }

  @Override
  public void refuse(Answer answer) {
    answer.cue().ifPresent(desk.sounds()::play);
    open(() -> new RefusedScreen(desk, answer, this::scanAgain));
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
    String said = message();
    bar = bar();
    works.replaceAll(each -> new WorkBand(each.work(), desk.touch()));
    bar.message().say(said);
    stack.replaceAll(stop -> new Stop(stop.maker(), stop.maker().get()));
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
