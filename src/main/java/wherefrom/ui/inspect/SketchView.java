package wherefrom.ui.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Group;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.SVGPath;
import javafx.scene.shape.Shape;
import javafx.scene.transform.Scale;
import wherefrom.inspection.Check;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;

/** Draws what a quick test is for, with a ring and a word at each spot to look at. */
final class SketchView extends Region {
  static final double WIDE = 120;
  static final double HIGH = 60;

  /** Half of a ring's line. */
  private static final double RIM = 1.2;

  private final Scale zoom = new Scale(1, 1);
  private final Group drawn = new Group();
  private final List<Sketch.Mark> marks;
  private final List<FitText> words = new ArrayList<>();
  private final double gap;

  SketchView(Touch touch, Check check) {
    gap = touch.scale().px(1);
    marks = Sketches.marks(check);
    drawn.getTransforms().add(zoom);
    drawn.setManaged(false);
    Sketches.find(check)
        .ifPresent(
            sketch -> sketch.strokes().forEach(stroke -> drawn.getChildren().add(drawn(stroke))));
    getChildren().add(drawn);
    for (Sketch.Mark mark : marks) {
      drawn.getChildren().add(ring(mark, "sketch-ring-edge", 4));
      drawn.getChildren().add(ring(mark, "sketch-ring", 2));
      FitText said = touch.small(mark.words()).centred();
      words.add(said);
      getChildren().add(said);
    }
    setMouseTransparent(true);
    getStyleClass().add("row");
    Panes.grow(this);
  }

  private static Shape drawn(Sketch.Stroke stroke) {
    SVGPath path = new SVGPath();
    path.setContent(stroke.path());
    path.getStyleClass().add("sketch-" + stroke.ink().name().toLowerCase(Locale.ROOT));
    return path;
  }

  private static Shape ring(Sketch.Mark mark, String look, double width) {
    Circle ring = new Circle(mark.x(), mark.y(), mark.radius());
    ring.getStyleClass().add(look);
    ring.setStrokeWidth(width * 0.6);
    return ring;
  }

  private double line() {
    return words.isEmpty() ? 0 : words.get(0).minHeight(10_000);
  }

  @Override
  protected double computeMinHeight(double width) {
    return HIGH * gap * 0.3 + 2 * line();
  }

  @Override
  protected double computePrefHeight(double width) {
    return HIGH * gap + 2 * line();
  }

  /** The upper half's words stand in a line above the drawing, the lower half's below. */
  @Override
  protected void layoutChildren() {
    double line = line();
    double room = getHeight() - 2 * line - 4 * gap;
    double above = above();
    double high = above + HIGH + below();
    double scale = Math.max(0.1, Math.min((getWidth() - 4 * gap) / WIDE, room / high));
    zoom.setX(scale);
    zoom.setY(scale);
    double left = (getWidth() - WIDE * scale) / 2;
    double top = line + 2 * gap + (room - high * scale) / 2 + above * scale;
    drawn.setLayoutX(left);
    drawn.setLayoutY(top);
    place(true, left, scale, gap);
    place(false, left, scale, getHeight() - line - gap);
  }

  /** How far rings reach out of the drawing at its top. */
  private double above() {
    double reach =
        marks.stream().mapToDouble(mark -> RIM + mark.radius() - mark.y()).max().orElse(0);
    return Math.max(0, reach);
  }

  /** How far rings reach out of the drawing at its bottom. */
  private double below() {
    double reach =
        marks.stream().mapToDouble(mark -> mark.y() + mark.radius() + RIM - HIGH).max().orElse(0);
    return Math.max(0, reach);
  }

  private void place(boolean upper, double left, double scale, double y) {
    double from = gap;
    for (int at = 0; at < marks.size(); at++) {
      if (isUpper(at) == upper) {
        double wide = words.get(at).prefWidth(-1);
        double wanted = left + marks.get(at).x() * scale - wide / 2;
        double x = Math.max(from, Math.min(wanted, getWidth() - wide - gap));
        words.get(at).resizeRelocate(x, y, wide, line());
        // What has no room beside the others is left out: its ring stays.
        words.get(at).setVisible(x + wide <= getWidth());
        from = x + wide + 3 * gap;
      }
    }
  }

  /** The first mark's words stand above where it lies in the upper half; the second opposite. */
  private boolean isUpper(int at) {
    boolean same = at > 0 && at == marks.size() - 1 && marks.size() > 2;
    return same ? !isUpper(0) : marks.get(at).y() < HIGH / 2 || isLevel(at);
  }

  private boolean isLevel(int at) {
    return marks.get(at).y() == HIGH / 2;
  }
}
