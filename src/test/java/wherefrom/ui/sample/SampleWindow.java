package wherefrom.ui.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javafx.application.Platform;
import javafx.event.EventType;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.settings.Appearance;
import wherefrom.job.settings.Settings;
import wherefrom.job.shelf.Shelf;
import wherefrom.rules.Cue;
import wherefrom.ui.Screens;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Shell;
import wherefrom.ui.app.VerdictSounds;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.puttogether.PutTogetherScreen;

/** The whole window's contents over sample services, with a clock that the test turns. */
public final class SampleWindow {
  /** The keys that write several entries at one touch, each with its reason. */
  private static final Map<String, String> SEVERAL =
      Map.of(
          "Log ", "each part on the tray is a step of its own, taken back by itself",
          "It is taken out", "what is stopped after that is a stop of its own",
          "Taken out there", "what is stopped after that is a stop of its own",
          "Upside down", "a fit that was none is taken back; the stop stands for itself",
          "Back to front", "a fit that was none is taken back; the stop stands for itself",
          "I held it", "a fit that was none is taken back; the stop stands for itself");

  public final SampleServices services = new SampleServices();
  public final AtomicLong nanos = new AtomicLong(1_000_000_000L);

  /** What is heard; silence unless a test listens. */
  public VerdictSounds sounds = VerdictSounds.NONE;

  /** Does what is done away from the window's thread. */
  public Executor workers;

  public final Scene scene;
  public final Shell shell;

  /**
   * @param dpi 96 for a window of 1280 by 800, 160 for one of 1920 by 1200
   */
  public SampleWindow(int dpi, int textPercent) {
    this(dpi, textPercent, Optional.empty(), work -> work.run(), services -> {});
  }

  /** On a piece of glass, in a look. */
  public SampleWindow(Glass glass, int textPercent, Appearance look) {
    this(
        glass,
        textPercent,
        Optional.empty(),
        work -> work.run(),
        services -> services.settings = services.settings.withLook(look));
  }

  /** Over a shelf of the test's own. */
  public SampleWindow(int dpi, int textPercent, Shelf shelf) {
    this(dpi, textPercent, Optional.of(shelf), work -> work.run(), services -> {});
  }

  /**
   * Over a shelf of the test's own.
   *
   * @param first does what is done away from the window's thread
   * @param arranged changes the services before the window opens
   */
  public SampleWindow(
      int dpi,
      int textPercent,
      Optional<Shelf> shelf,
      Executor first,
      Consumer<SampleServices> arranged) {
    this(glass(dpi), textPercent, shelf, first, arranged);
  }

  private static Glass glass(int dpi) {
    return dpi == 96 ? Glass.GUESSED : new Glass("tests", 1920, 1200, dpi / 25.4);
  }

  private SampleWindow(
      Glass glass,
      int textPercent,
      Optional<Shelf> shelf,
      Executor first,
      Consumer<SampleServices> arranged) {
    workers = first;
    Settings fresh = services.settings;
    services.settings = fresh.withPixelsPerMm(glass.pixelsPerMm()).withTextPercent(textPercent);
    arranged.accept(services);
    shell =
        new Shell(
            Screens.all(),
            Screens::camera,
            services.all(shelf),
            nanos::get,
            heard(),
            work -> this.workers.execute(work));
    scene = new Scene(shell, glass.width(), glass.height());
    shell.keys().attach(scene);
    layOut();
  }

  private VerdictSounds heard() {
    return new VerdictSounds() {
      @Override
      public void play(Cue cue) {
        sounds.play(cue);
      }

      @Override
      public void hush() {
        sounds.hush();
      }
    };
  }

  /**
   * Shows the window on the screen, as large as that is, with the keys. The toolkit outlives it:
   * other tests run in it.
   */
  public Stage show() {
    Platform.setImplicitExit(false);
    Stage opened = new Stage();
    opened.setScene(scene);
    opened.setMaximized(true);
    opened.show();
    opened.requestFocus();
    return opened;
  }

  /**
   * Ends the window's life. JavaFX keeps a list of everything that brings a style sheet, and goes
   * through it for each node of any window: where hundreds are opened, each is to leave it.
   */
  public void takeDown() {
    scene.setRoot(new Group());
  }

  /**
   * Lays everything out, as the next frame would. What lays itself out may make nodes, which want
   * their looks and their places: then once more.
   */
  public void layOut() {
    shell.applyCss();
    shell.layout();
    long before = sum(shell);
    shell.applyCss();
    shell.layout();
    if (sum(shell) != before) {
      shell.applyCss();
      shell.layout();
    }
  }

  /** Which nodes there are, in which classes of looks and states. */
  private static long sum(Node node) {
    long sum = System.identityHashCode(node);
    sum = sum * 31 + node.getStyleClass().hashCode();
    sum = sum * 31 + node.getPseudoClassStates().hashCode();
    if (node instanceof Parent parent) {
      for (Node child : parent.getChildrenUnmodifiable()) {
        sum = sum * 31 + sum(child);
      }
    }
    return sum;
  }

  /** A reader reads a code. */
  public void scan(String text) {
    shell.scan(text);
  }

  /** A moment passes: enough for the next press to count. */
  public void moment() {
    nanos.addAndGet(550_000_000L);
  }

  /**
   * Presses the target whose first words are these, as a finger would.
   *
   * @throws AssertionError when there is none, with what there is
   */
  public void press(String words) {
    press(words, node -> words(node).startsWith(words));
  }

  /** Presses a key of the rail, which large text may have moved to the page of the rest. */
  public void pressRail(String words) {
    if (targets().stream().noneMatch(node -> words(node).equals(words))) {
      press(
          targets().stream()
              .filter(node -> words(node).equals("Menu") && isOnRail(node))
              .findFirst()
              .orElseThrow(() -> new AssertionError(words + " is not on the rail")));
    }
    pressExactly(words);
  }

  /** Whether it is one of the keys that have one place on every screen. */
  public boolean isOnRail(Node node) {
    return node != null && (node.getStyleClass().contains("rail") || isOnRail(node.getParent()));
  }

  /** Presses a key below a screen; where it has no room there, it is behind the key More. */
  public void pressBelow(String words) {
    if (targets().stream().noneMatch(node -> words(node).startsWith(words))) {
      restOfKeys().ifPresent(this::press);
    }
    pressOnSomePage(words);
  }

  /** The key More of the row below a screen; the rail can have one too. */
  private Optional<Node> restOfKeys() {
    List<Node> all = targets().stream().filter(node -> words(node).equals("More")).toList();
    return all.stream()
        .filter(SampleWindow::isInRow)
        .findFirst()
        .or(() -> all.stream().findFirst());
  }

  private static boolean isInRow(Node node) {
    return node != null && (node instanceof KeyRow || isInRow(node.getParent()));
  }

  /** Presses the target that has these words and no more. */
  public void pressExactly(String words) {
    press(words, node -> words(node).equals(words));
  }

  /** Presses one of several targets that have these words and no more, counted from 0. */
  public void pressNth(String words, int at) {
    press(targets().stream().filter(node -> words(node).equals(words)).toList().get(at));
  }

  /** Turns the pages of a list until a target's first words are these, and presses it. */
  public void pressOnSomePage(String words) {
    while (targets().stream().noneMatch(node -> words(node).startsWith(words))) {
      press("Down", node -> words(node).equals("Down"));
    }
    press(words);
  }

  private void press(String words, Predicate<Node> wanted) {
    List<String> seen = targets().stream().map(this::words).toList();
    Optional<Node> target =
        find(words, wanted).or(() -> onLaterPages(words, wanted)).or(() -> behind(words, wanted));
    press(target.orElseThrow(() -> new AssertionError(words + " is not among " + seen)));
  }

  private Optional<Node> find(String words, Predicate<Node> wanted) {
    return targets().stream().filter(wanted).findFirst().or(() -> spoken(words));
  }

  /** Turns the pages of a list, as a person does who does not see what is wanted. */
  private Optional<Node> onLaterPages(String words, Predicate<Node> wanted) {
    Optional<Node> found = Optional.empty();
    Optional<Node> down = named("Down");
    int turned = 0;
    while (found.isEmpty() && down.isPresent()) {
      press(down.get());
      turned++;
      found = find(words, wanted);
      down = named("Down");
    }
    for (; found.isEmpty() && turned > 0; turned--) {
      named("Up").ifPresent(this::press);
    }
    return found;
  }

  /** Looks behind the keys that hold what has no room. */
  private Optional<Node> behind(String words, Predicate<Node> wanted) {
    int keys = (int) targets().stream().filter(node -> isMore(node)).count();
    for (int at = 0; at < keys; at++) {
      press(targets().stream().filter(this::isMore).toList().get(at));
      Optional<Node> found = find(words, wanted).or(() -> onLaterPages(words, wanted));
      if (found.isPresent()) {
        return found;
      }
      shell.context().navigator().back();
      layOut();
    }
    return Optional.empty();
  }

  private boolean isMore(Node node) {
    return List.of("More", "Menu").contains(words(node));
  }

  private Optional<Node> named(String words) {
    return targets().stream().filter(node -> words(node).equals(words)).findFirst();
  }

  /** A key that has a drawing and no words is known by what it says to a screen reader. */
  private Optional<Node> spoken(String words) {
    return targets().stream()
        .filter(node -> words(node).isEmpty() && words.equals(node.getAccessibleText()))
        .findFirst();
  }

  /**
   * Presses a target in its middle. Whatever the test is about: one touch is one act, and one act
   * is one entry.
   */
  public void press(Node target) {
    moment();
    tap(target);
  }

  /** Presses a target in its middle, however soon after the last press. */
  public void tap(Node target) {
    String words = words(target);
    Optional<OpenJob> job = shell.context().job();
    long before = job.map(SampleWindow::entries).orElse(0L);
    boolean elsewhere = !isPuttingTogether();
    target.getOnMousePressed().handle(event(target, MouseEvent.MOUSE_PRESSED));
    target.getOnMouseReleased().handle(event(target, MouseEvent.MOUSE_RELEASED));
    layOut();
    long more = job.map(SampleWindow::entries).orElse(0L) - before;
    // What was done about a stop elsewhere is an act; then the scan that waited is judged again.
    long most = elsewhere && isPuttingTogether() ? 2 : 1;
    if (more > most && SEVERAL.keySet().stream().noneMatch(words::startsWith)) {
      throw new AssertionError("\"" + words + "\" wrote " + more + " entries for one touch");
    }
  }

  private boolean isPuttingTogether() {
    return shell.current() instanceof PutTogetherScreen;
  }

  private static long entries(OpenJob job) {
    return job.history().stream().map(LoggedEntry::sequence).distinct().count();
  }

  private static MouseEvent event(Node target, EventType<MouseEvent> type) {
    double x = target.getLayoutBounds().getCenterX();
    double y = target.getLayoutBounds().getCenterY();
    return Mouse.event(type, x, y);
  }

  /** Every target that is shown. */
  public List<Node> targets() {
    List<Node> targets = new ArrayList<>();
    collect(shell, targets);
    return targets;
  }

  private static void collect(Node node, List<Node> targets) {
    if (!node.isVisible()) {
      return;
    }
    if (node.getProperties().containsKey(Touch.MARK)) {
      targets.add(node);
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, targets));
    }
  }

  /** The words on a node. */
  public String words(Node node) {
    if (!node.isVisible()) {
      return "";
    }
    if (node instanceof FitText text) {
      return text.words().replace('\n', ' ').replace('\u00a0', ' ');
    }
    if (isDrawn(node)) {
      return node.getAccessibleText();
    }
    StringBuilder all = new StringBuilder();
    if (node instanceof Parent parent) {
      for (Node child : parent.getChildrenUnmodifiable()) {
        String inner = words(child);
        all.append(all.isEmpty() || inner.isEmpty() ? "" : " ").append(inner);
      }
    }
    return all.toString();
  }

  /** Whether a target shows a drawing, so that its words are only said aloud. */
  private static boolean isDrawn(Node node) {
    return node.getStyleClass().contains("drawn-zone") || node.getStyleClass().contains("kind-key");
  }

  /** All words that are seen on the screen. */
  public String words() {
    return words(shell);
  }
}
