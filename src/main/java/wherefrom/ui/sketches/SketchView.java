package wherefrom.ui.sketches;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
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
public final class SketchView extends Region {
  static final double WIDE = 120;
  static final double HIGH = 60;

  /** Words stand beside the drawing where it is larger by so much. */
  private static final double WORTH = 1.2;

  /** From one ring's words to another's in the same line, so that they are not read as one. */
  private static final double APART_MM = 8;

  /** Half of a ring's line. */
  private static final double RIM = 1.2;

  private final Scale zoom = new Scale(1, 1);
  private final Group drawn = new Group();
  private final List<Sketch.Mark> marks;
  private final List<FitText> words = new ArrayList<>();
  private final List<SketchLead> leads = new ArrayList<>();
  private final double gap;
  private final boolean large;
  private boolean isBeside;

  public SketchView(Touch touch, Check check) {
    gap = touch.scale().px(1);
    large = touch.isLarge();
    isBeside = large;
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
    // One ring's words can be no other's.
    for (int at = 0; marks.size() > 1 && at < marks.size(); at++) {
      leads.add(new SketchLead(gap));
    }
    getChildren().addAll(leads);
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
    // Of large letters the drawing takes what room there is; where its words stand depends on it.
    return HIGH * gap * 0.3 + (large ? 0 : 2 * line());
  }

  @Override
  protected double computePrefHeight(double width) {
    return HIGH * gap + 2 * line();
  }

  /**
   * The upper half's words stand in a line above the drawing, the lower half's below. Large letters
   * stand in one line below, or beside the drawing where it is larger so.
   */
  @Override
  protected void layoutChildren() {
    double high = above() + HIGH + below();
    double over = high(true);
    double lines = over + high(false);
    double stacked = zoom(getWidth(), getHeight() - lines, high);
    double beside = zoom(getWidth() - sides() * side(), getHeight(), high);
    isBeside = large && beside > WORTH * stacked;
    double scale = Math.max(0.1, isBeside ? beside : stacked);
    zoom.setX(scale);
    zoom.setY(scale);
    double left = (getWidth() - WIDE * scale) / 2;
    double room = getHeight() - (isBeside ? 0 : lines) - 4 * gap;
    double top = (isBeside ? 0 : over) + 2 * gap + (room - high * scale) / 2 + above() * scale;
    if (isBeside) {
      left = placeBeside(scale);
    }
    drawn.setLayoutX(left);
    drawn.setLayoutY(top);
    if (large && !isBeside) {
      placeInOneLine(told(fromLeft()), left, scale, getHeight() - line() - gap);
    } else if (!isBeside) {
      placeInOneLine(told(half(true)), left, scale, gap);
      placeInOneLine(told(half(false)), left, scale, getHeight() - line() - gap);
    }
    lead(left, top, scale);
  }

  private void lead(double left, double top, double scale) {
    for (int at = 0; at < leads.size(); at++) {
      Sketch.Mark mark = marks.get(at);
      Circle ring =
          new Circle(left + mark.x() * scale, top + mark.y() * scale, mark.radius() * scale);
      leads.get(at).setVisible(false);
      if (words.get(at).isVisible()) {
        leads.get(at).lead(ring, words.get(at).getBoundsInParent());
      }
    }
  }

  /** The marks whose words stand above the drawing, or below it, from left to right. */
  private List<Integer> half(boolean upper) {
    return fromLeft().stream().filter(at -> isUpper(at) == upper).toList();
  }

  /** What the words above the drawing take of its height, or those below. */
  private double high(boolean upper) {
    boolean any = IntStream.range(0, marks.size()).anyMatch(at -> isUpper(at) == upper);
    return any ? line() : 0;
  }

  /**
   * The marks whose words fit one line, the first of them before the others; the words of the
   * others are left out: their rings stay.
   */
  private List<Integer> told(List<Integer> wanted) {
    double left = getWidth() - 2 * gap;
    List<Integer> told = new ArrayList<>();
    for (int at : wanted.stream().sorted().toList()) {
      double wide = words.get(at).prefWidth(-1);
      boolean fits = wide <= left;
      words.get(at).setVisible(fits);
      if (fits) {
        told.add(at);
        left -= wide + APART_MM * gap;
      }
    }
    return wanted.stream().filter(told::contains).toList();
  }

  /** The marks from left to right. */
  private List<Integer> fromLeft() {
    return IntStream.range(0, marks.size())
        .boxed()
        .sorted(Comparator.comparingDouble(at -> marks.get(at).x()))
        .toList();
  }

  /** How large the drawing is in a room. */
  private double zoom(double width, double height, double high) {
    return Math.min((width - 4 * gap) / WIDE, (height - 4 * gap) / high);
  }

  /** The columns of words beside the drawing. */
  private int sides() {
    return Math.min(2, marks.size());
  }

  /** How wide a column of words is at least. */
  private double side() {
    return 3 * gap + words.stream().mapToDouble(said -> said.minWidth(-1)).max().orElse(0);
  }

  /**
   * The words of the leftmost ring stand on the left, those of the rightmost on the right, and one
   * ring's on its own side alone. What has no room is left out: its ring stays.
   *
   * @return where the drawing begins
   */
  private double placeBeside(double scale) {
    double wide = WIDE * scale;
    double spare = getWidth() - wide;
    List<Integer> order = fromLeft();
    words.forEach(said -> said.setVisible(false));
    boolean both = order.size() > 1;
    boolean onRight = !both && marks.get(0).x() >= WIDE / 2;
    double left = both ? spare / 2 : onRight ? 0 : spare;
    double column = (both ? spare / 2 : spare) - 3 * gap;
    if (both || !onRight) {
      tell(words.get(order.get(0)), 0, column);
    }
    if (both || onRight) {
      tell(words.get(order.get(order.size() - 1)), getWidth() - column, column);
    }
    return left;
  }

  private void tell(FitText said, double x, double wide) {
    double high = said.minHeight(wide);
    said.setVisible(said.minWidth(-1) <= wide && high <= getHeight());
    Panes.place(said, x, Math.max(0, (getHeight() - high) / 2), wide, high);
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

  /** Each level with its ring, as far as the others leave it room. */
  private void placeInOneLine(List<Integer> told, double left, double scale, double y) {
    double from = gap;
    double to = getWidth() - gap;
    double others =
        told.stream().mapToDouble(at -> words.get(at).prefWidth(-1) + APART_MM * gap).sum();
    for (int at : told) {
      double wide = words.get(at).prefWidth(-1);
      others -= wide + APART_MM * gap;
      double wanted = left + marks.get(at).x() * scale - wide / 2;
      double x = Math.max(from, Math.min(wanted, to - others - wide));
      Panes.place(words.get(at), x, y, wide, line());
      from = x + wide + APART_MM * gap;
    }
  }

  /**
   * The first mark's words stand above where it lies in the upper half; the last opposite, where
   * there are more than two or no line holds the words of both.
   */
  private boolean isUpper(int at) {
    if (large) {
      return false;
    }
    boolean last = at > 0 && at == marks.size() - 1;
    boolean opposite = last && (marks.size() > 2 || !isOneLine());
    return opposite ? !isUpper(0) : marks.get(at).y() < HIGH / 2 || isLevel(at);
  }

  private boolean isOneLine() {
    double wide = words.stream().mapToDouble(said -> said.prefWidth(-1)).sum();
    return wide + (words.size() - 1) * APART_MM * gap <= getWidth() - 2 * gap;
  }

  private boolean isLevel(int at) {
    return marks.get(at).y() == HIGH / 2;
  }
}
