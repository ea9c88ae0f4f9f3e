package wherefrom.ui.sketches;

import javafx.geometry.Bounds;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;

/** A line from a ring to its words, so that the words of several are not taken for each other's. */
final class SketchLead extends Line {
  private final double gap;

  /**
   * @param gap from the line's end to the words, in pixels
   */
  SketchLead(double gap) {
    this.gap = gap;
    setManaged(false);
    setVisible(false);
    getStyleClass().add("sketch-lead");
    getStrokeDashArray().setAll(2 * gap, gap);
  }

  /** Leads from the edge of a ring to the side of the words that lies next to it. */
  void lead(Circle ring, Bounds words) {
    boolean level = words.getMinY() < ring.getCenterY() && ring.getCenterY() < words.getMaxY();
    double toX =
        level ? nearest(ring.getCenterX(), words.getMinX(), words.getMaxX()) : words.getCenterX();
    double toY =
        level ? words.getCenterY() : nearest(ring.getCenterY(), words.getMinY(), words.getMaxY());
    double far = Math.hypot(toX - ring.getCenterX(), toY - ring.getCenterY());
    double from = ring.getRadius() / Math.max(1, far);
    double to = 1 - gap / Math.max(1, far);
    setVisible(from < to);
    setStartX(ring.getCenterX() + from * (toX - ring.getCenterX()));
    setStartY(ring.getCenterY() + from * (toY - ring.getCenterY()));
    setEndX(ring.getCenterX() + to * (toX - ring.getCenterX()));
    setEndY(ring.getCenterY() + to * (toY - ring.getCenterY()));
  }

  private static double nearest(double to, double one, double other) {
    return Math.abs(to - one) < Math.abs(to - other) ? one : other;
  }
}
