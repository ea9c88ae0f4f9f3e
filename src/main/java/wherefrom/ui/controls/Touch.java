package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;

/**
 * Makes everything that can be pressed. What it makes acts on release, takes no second press within
 * 250 ms, never takes the keyboard's focus, and carries a mark by which the size of every target
 * can be checked. The second of two quick taps never reaches what has come up under the finger
 * since the first: one touch, one deed.
 */
public final class Touch extends Lettering {
  /** The mark's name among a node's properties. */
  public static final String MARK = "touch";

  /** The style of a place on a drawing that takes a touch and is not seen as a key. */
  public static final String ZONE = "drawn-zone";

  /** The mark of a target that discards a record or overrules a stop: it needs more room. */
  public static final String DISCARDS = "discards";

  private static final long REPEAT_NANOS = 250_000_000L;

  /** The taps of a double tap come within half a second (common practice, no source). */
  private static final long PAIR_NANOS = 500_000_000L;

  /** Two taps of one finger that mean one place lie no further apart than a key is wide. */
  private static final double FINGER_MM = Scale.KEY_MM;

  private record Tap(Node node, Point2D at, long nanos) {}

  /** What one finger has done; letters of another size do not change that. */
  private static final class Taps {
    private long quietUntil = Long.MIN_VALUE;
    private Optional<Tap> last = Optional.empty();
    private Runnable before = () -> {};
    private Consumer<Runnable> within = Runnable::run;
  }

  private Scale scale;
  private final LongSupplier nanos;
  private final Ticker ticker;
  private final Taps taps;

  /**
   * @param nanos a steady clock
   */
  public Touch(Scale scale, LongSupplier nanos) {
    this(scale, nanos, Ticker.WINDOW);
  }

  /**
   * @param ticker lets the time of a hold pass
   */
  Touch(Scale scale, LongSupplier nanos, Ticker ticker) {
    this(scale, nanos, ticker, new Taps());
  }

  private Touch(Scale scale, LongSupplier nanos, Ticker ticker, Taps taps) {
    this.scale = scale;
    this.nanos = nanos;
    this.ticker = ticker;
    this.taps = taps;
  }

  /** The same finger on keys with letters of another size. */
  public Touch with(Scale letters) {
    return new Touch(letters, nanos, ticker, taps);
  }

  @Override
  public Scale scale() {
    return scale;
  }

  /**
   * Gives the words that were made by this touch letters of another size, where they stand. What
   * shows them is to be laid out again.
   */
  public void setText(double factor) {
    Scale asked = scale.withText(factor);
    scale = isLarge() ? asked.brief() : asked;
  }

  /** No press counts for a moment: another screen has just come up under the finger. */
  public void settle() {
    quiet(REPEAT_NANOS);
  }

  /** No press counts for as long as a double tap takes: what was done must not be done twice. */
  public void once() {
    quiet(PAIR_NANOS);
  }

  /** Told of every press that counts, before it acts. */
  public void beforeEach(Runnable listener) {
    taps.before = listener;
  }

  /** Runs the deed of every press from now on, so that what fails in it is told at one place. */
  public void within(Consumer<Runnable> guard) {
    taps.within = guard;
  }

  private void quiet(long forNanos) {
    taps.quietUntil = Math.max(taps.quietUntil, nanos.getAsLong() + forNanos);
  }

  /** Any target; the node must be large enough. */
  public <N extends Node> N target(N node, Runnable act) {
    Press press = new Press(this::accepts, nanos, REPEAT_NANOS, () -> act(act));
    node.getProperties().put(MARK, press);
    node.setPickOnBounds(true);
    node.setFocusTraversable(false);
    node.setAccessibleRole(AccessibleRole.BUTTON);
    node.setOnMousePressed(
        event -> {
          if (!isSecondTap(node, node.localToScene(event.getX(), event.getY()))) {
            press.down();
          }
        });
    node.setOnMouseReleased(
        event -> {
          if (press.lift() && node.contains(event.getX(), event.getY())) {
            Point2D at = node.localToScene(event.getX(), event.getY());
            taps.last = Optional.of(new Tap(node, at, nanos.getAsLong()));
            press.act();
          }
        });
    return node;
  }

  /** A target that asks where it was touched; told of no point where no finger pressed it. */
  public <N extends Node> N surface(N node, Consumer<Optional<Point2D>> act) {
    List<Point2D> at = new ArrayList<>();
    node.addEventFilter(
        MouseEvent.MOUSE_RELEASED, event -> at.add(new Point2D(event.getX(), event.getY())));
    return target(
        node,
        () -> {
          Optional<Point2D> last =
              at.isEmpty() ? Optional.empty() : Optional.of(at.get(at.size() - 1));
          at.clear();
          act.accept(last);
        });
  }

  /** Presses a target without a finger; a key that is to be held is held until its release. */
  public static void press(Node target) {
    Object mark = target.getProperties().get(MARK);
    if (mark instanceof Press press) {
      press.down();
      if (press.lift()) {
        press.act();
      }
    } else if (mark instanceof HoldKey hold) {
      hold.press();
    }
  }

  /** Whether a node is a target. */
  public static boolean isTarget(Node node) {
    return node.getProperties().containsKey(MARK);
  }

  /** Whether a target acts only after it was held down. */
  public static boolean isHeld(Node target) {
    return target.getProperties().get(MARK) instanceof HoldKey;
  }

  /** Does what a key says that is to be held, as if it had been held down long enough. */
  public static void held(Node target) {
    if (target.getProperties().get(MARK) instanceof HoldKey hold) {
      hold.held();
    }
  }

  /** Lets a target go that was pressed without a finger. */
  public static void release(Node target) {
    if (target.getProperties().get(MARK) instanceof HoldKey hold) {
      hold.release();
    }
  }

  private void act(Runnable deed) {
    taps.before.run();
    taps.within.accept(deed);
  }

  private boolean accepts() {
    return nanos.getAsLong() >= taps.quietUntil;
  }

  /** Whether a finger that has just acted comes down there again, on something that is new. */
  private boolean isSecondTap(Node node, Point2D at) {
    return taps.last
        .filter(tap -> tap.node() != node)
        .filter(tap -> nanos.getAsLong() - tap.nanos() < PAIR_NANOS)
        .filter(tap -> tap.at().distance(at) < scale.px(FINGER_MM))
        .isPresent();
  }

  /** A key of a pad: a single letter or a short word, as large as there is room for. */
  public TouchKey padKey(String words, Runnable act) {
    return target(new TouchKey(scale, pad(words), Scale.KEY_MM, "pad"), act);
  }

  public TouchKey key(String words, Runnable act) {
    return target(plate(words, Scale.KEY_MM, "plain"), act);
  }

  /**
   * The tag: the one thing to do now, once on a screen.
   *
   * @param words what to do
   * @param more how else, or what follows; may be empty
   */
  public TagKey tag(String words, String more, Runnable act) {
    return target(new TagKey(scale, heading(words), small(more)), act);
  }

  /** A key that acts after it was held down for 1.5 seconds. */
  public Region hold(String words, Runnable act) {
    return new HoldKey(this, plate(words, Scale.KEY_MM, "danger"), ticker, () -> act(act));
  }

  /** A key that is on or off and says which in words too. */
  public TouchKey toggle(String words, boolean on, Consumer<Boolean> act) {
    TouchKey key = plate(words + (on ? ": yes" : ": no"), Scale.KEY_MM, "plain").stress(on);
    boolean[] state = {on};
    return target(
        key,
        () -> {
          state[0] = !state[0];
          key.stress(state[0]);
          key.setWords(words + (state[0] ? ": yes" : ": no"));
          act.accept(state[0]);
        });
  }

  private TouchKey plate(String words, double leastMm, String styleClass) {
    return new TouchKey(scale, heading(words), leastMm, styleClass);
  }
}
