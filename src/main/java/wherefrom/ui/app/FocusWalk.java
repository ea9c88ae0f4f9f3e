package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.geometry.Side;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.layout.Region;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.TagPlate;
import wherefrom.ui.controls.Touch;

/**
 * The way from key to key without a finger: Tab and the arrows move a ring, Enter presses what it
 * is round. The ring is seen from the first such key on, until the glass is touched.
 */
final class FocusWalk {
  /** Sideways counts double, so that an arrow leads straight on where it can. */
  private static final double SIDEWAYS = 2;

  /** The ring stands so far outside its key, in pixels. */
  private static final double OUT = 9;

  private final Parent root;
  private final Region ring = new Region();
  private Optional<Node> at = Optional.empty();
  private Optional<Point2D> last = Optional.empty();
  private boolean toTag;
  private Optional<Node> pressed = Optional.empty();

  /** What the whole glass stood for when it was drawn last; empty where no screen took it. */
  private Optional<Object> stood = Optional.empty();

  /** The key to be held that a first card has asked for. */
  private Optional<Node> armed = Optional.empty();

  FocusWalk(Parent root) {
    this.root = root;
    ring.getStyleClass().add("focus-ring");
    ring.setMouseTransparent(true);
    ring.setManaged(false);
    ring.setVisible(false);
  }

  /** What is to lie above the window's contents. */
  Region ring() {
    return ring;
  }

  /** Follows its key wherever the next frame puts it; a touch takes the ring away. */
  void attach(Scene scene) {
    scene.addPostLayoutPulseListener(this::follow);
    scene.addEventFilter(javafx.scene.input.MouseEvent.MOUSE_PRESSED, event -> forget());
  }

  /**
   * Another screen has come up. Whoever came there by keys finds the ring on its tag: Enter presses
   * it.
   *
   * @param screen on one that can take the whole glass, as a stop, no tag is pressed unseen
   */
  void arrive(Screen screen) {
    boolean keyed = ring.isVisible();
    forget();
    stood = WholeGlass.standing(screen);
    toTag = keyed && !(screen instanceof WholeGlass) && Typable.of(screen).isEmpty();
  }

  /** The screen has changed: no ring that stood elsewhere lies on the keys of a new stop. */
  void follow(Screen screen) {
    Optional<Object> now = WholeGlass.standing(screen);
    if (!now.equals(stood)) {
      forget();
    }
    stood = now;
  }

  /** Nothing is pointed at: the walk begins anew. */
  void forget() {
    toTag = false;
    disarm();
    at = Optional.empty();
    last = Optional.empty();
    ring.setVisible(false);
  }

  /**
   * The tag, then the keys of the screen, then the places on its drawing, then the keys of the
   * rail: the first step never stands on a place that Enter would take.
   */
  private List<Node> targets() {
    List<Node> targets = new ArrayList<>();
    collect(root, targets);
    targets.sort(Comparator.comparing(FocusWalk::turn));
    return targets;
  }

  private static int turn(Node node) {
    if (isTag(node)) {
      return 0;
    }
    if (isOnRail(node)) {
      return 3;
    }
    return node.getStyleClass().contains(Touch.ZONE) ? 2 : 1;
  }

  private static boolean isOnRail(Node node) {
    return node != null && (node instanceof Rail || isOnRail(node.getParent()));
  }

  private static void collect(Node node, List<Node> targets) {
    if (!node.isVisible() || node.isDisabled()) {
      return;
    }
    if (node.getProperties().containsKey(Touch.MARK) && !node.isMouseTransparent()) {
      targets.add(node);
    } else if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, targets));
    }
  }

  private static Bounds bounds(Node node) {
    return node.localToScene(node.getLayoutBounds());
  }

  private static Point2D middle(Node node) {
    Bounds bounds = bounds(node);
    return new Point2D(bounds.getCenterX(), bounds.getCenterY());
  }

  /** The key that has the ring; the nearest to where it was when that key is no longer there. */
  private Optional<Node> current(List<Node> targets) {
    if (at.isPresent() && targets.contains(at.get())) {
      return at;
    }
    return last.flatMap(
        point -> targets.stream().min(Comparator.comparing(node -> middle(node).distance(point))));
  }

  private void stand(Node node) {
    disarm();
    at = Optional.of(node);
    last = Optional.of(middle(node));
    node.requestFocus();
    follow();
  }

  /** To the next key, or the one before; the first step leads to the tag, where there is one. */
  void step(boolean backwards) {
    settle();
    List<Node> targets = targets();
    if (targets.isEmpty()) {
      return;
    }
    Optional<Node> current = current(targets);
    if (current.isEmpty()) {
      stand(targets.get(0));
      return;
    }
    int size = targets.size();
    int next = targets.indexOf(current.get()) + (backwards ? size - 1 : 1);
    stand(targets.get(next % size));
  }

  /** Whether it is the one thing to do on the screen. */
  private static boolean isTag(Node node) {
    return node instanceof TagKey || node instanceof TagPlate;
  }

  /** Whether the ring is seen. */
  boolean isSeen() {
    settle();
    return ring.isVisible() && current(targets()).isPresent();
  }

  /** Leads the ring to the tag; says whether there is one. */
  boolean toTag() {
    Optional<Node> tag = targets().stream().filter(FocusWalk::isTag).findFirst();
    tag.ifPresent(this::stand);
    return tag.isPresent();
  }

  /** To the nearest key on one side; where there is none the ring stays. */
  void move(Side side) {
    settle();
    List<Node> targets = targets();
    Optional<Node> current = current(targets);
    if (current.isEmpty()) {
      step(false);
      return;
    }
    Point2D from = middle(current.get());
    targets.stream()
        .filter(node -> node != current.get() && ahead(from, middle(node), side) > 1)
        .min(Comparator.comparing(node -> far(from, middle(node), side)))
        .ifPresent(this::stand);
  }

  private static double ahead(Point2D from, Point2D to, Side side) {
    return switch (side) {
      case LEFT -> from.getX() - to.getX();
      case RIGHT -> to.getX() - from.getX();
      case TOP -> from.getY() - to.getY();
      case BOTTOM -> to.getY() - from.getY();
    };
  }

  private static double far(Point2D from, Point2D to, Side side) {
    double across =
        side.isVertical() ? Math.abs(to.getY() - from.getY()) : Math.abs(to.getX() - from.getX());
    return ahead(from, to, side) + SIDEWAYS * across;
  }

  /** Presses the key that has the ring, once however long Enter is held. */
  boolean press() {
    settle();
    if (pressed.isPresent()) {
      return true;
    }
    Optional<Node> current = ring.isVisible() ? current(targets()) : Optional.empty();
    pressed = current;
    current.ifPresent(Touch::press);
    return current.isPresent();
  }

  /** Something else was scanned than the card that a key to be held was asked for with. */
  void disarm() {
    armed = Optional.empty();
  }

  /**
   * A card presses the key that has the ring. One that a finger would hold down is done by the
   * second card, so that no card alone does it.
   *
   * @return whether it is such a key, and this was the first
   */
  boolean card() {
    settle();
    Optional<Node> current = current(targets());
    boolean hold = current.filter(Touch::isHeld).isPresent();
    if (hold && !armed.equals(current)) {
      armed = current;
      return true;
    }
    disarm();
    if (hold) {
      current.ifPresent(Touch::held);
    } else {
      press();
      release();
    }
    return false;
  }

  /** Enter is up again. */
  void release() {
    pressed.ifPresent(Touch::release);
    pressed = Optional.empty();
  }

  /** The ring comes to the tag of a screen that has just come up, once its keys are laid out. */
  private void settle() {
    if (toTag) {
      toTag = false;
      toTag();
    }
  }

  /** Enter where nothing has the ring: it comes to the tag, so that what is pressed is seen. */
  void enter() {
    if (!press()) {
      toTag();
    }
  }

  private void follow() {
    settle();
    if (at.isEmpty()) {
      return;
    }
    Optional<Node> current = current(targets());
    ring.setVisible(current.isPresent());
    at = current;
    current.ifPresent(
        node -> {
          Bounds bounds = root.sceneToLocal(RingRoom.around(root, bounds(node), OUT));
          Panes.place(
              ring, bounds.getMinX(), bounds.getMinY(), bounds.getWidth(), bounds.getHeight());
        });
  }
}
