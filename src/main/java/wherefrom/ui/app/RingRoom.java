package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.text.Text;
import wherefrom.ui.controls.Touch;

/**
 * The room of the ring round what has the focus: it runs round the letters beside it, not through
 * them. The letters on another key are that key's own, and no ring reaches so far.
 */
final class RingRoom {
  /** Letters that stick out further than this many pixels are left to the ring: it stays near. */
  private static final double MOST = 120;

  private final double line;
  private final Bounds about;
  private final List<Bounds> letters = new ArrayList<>();

  private RingRoom(Bounds about, double line) {
    this.about = about;
    this.line = line;
  }

  /**
   * The room that a ring has without cutting letters.
   *
   * @param about what the ring is round, in the scene
   * @param out how far outside it the ring begins, in pixels
   * @return the ring's outer edge, in the scene
   */
  static Bounds around(Parent root, Bounds about, double out) {
    RingRoom room = new RingRoom(about, out);
    room.collect(root);
    return room.grown();
  }

  private static Bounds grown(Bounds box, double by) {
    return new BoundingBox(
        box.getMinX() - by, box.getMinY() - by, box.getWidth() + 2 * by, box.getHeight() + 2 * by);
  }

  private void collect(Node node) {
    if (!node.isVisible()) {
      return;
    }
    if (node instanceof Text text && !text.getText().isBlank()) {
      letters.add(text.localToScene(text.getLayoutBounds()));
    } else if (node instanceof Parent parent && !isOtherKey(node)) {
      parent.getChildrenUnmodifiable().forEach(this::collect);
    }
  }

  /** A key whose letters stand on its own plate; a zone on a drawing has none. */
  private static boolean isOtherKey(Node node) {
    return node.getProperties().containsKey(Touch.MARK);
  }

  private Bounds grown() {
    Bounds ring = grown(about, line);
    for (Bounds word : letters) {
      if (word.intersects(ring) && !inner(ring).contains(word) && isNear(word)) {
        ring = union(ring, grown(word, line));
      }
    }
    return ring;
  }

  /** What the ring's line leaves free. */
  private Bounds inner(Bounds ring) {
    return grown(ring, -line);
  }

  private boolean isNear(Bounds word) {
    return grown(about, MOST).contains(word);
  }

  private static Bounds union(Bounds one, Bounds other) {
    double left = Math.min(one.getMinX(), other.getMinX());
    double top = Math.min(one.getMinY(), other.getMinY());
    double right = Math.max(one.getMaxX(), other.getMaxX());
    double bottom = Math.max(one.getMaxY(), other.getMaxY());
    return new BoundingBox(left, top, right - left, bottom - top);
  }
}
