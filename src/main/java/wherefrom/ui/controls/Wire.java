package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Point2D;
import javafx.scene.Group;
import javafx.scene.layout.Region;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.QuadCurveTo;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;

/** The wire: from here to there, its corners round. It takes no touch. */
public final class Wire extends Group {
  /** The twist is a third of the wire's width, in dashes of 1.2 mm with 0.85 mm between. */
  private static final double TWIST = 0.34;

  private static final double WIDTH_MM = 0.85;
  private static final double DASH_MM = 1.2;
  private static final double GAP_MM = 0.85;
  private static final double ROUND_MM = 4;
  private static final double ARROW_MM = 4.6;
  private static final int BENDS = 24;

  private final Path wire = new Path();
  private final Path twist = new Path();
  private final Polygon head = new Polygon();
  private final double round;
  private final double arrow;

  public Wire(Scale scale) {
    double width = scale.px(WIDTH_MM);
    style(wire, "wire", width);
    style(twist, "wire-twist", TWIST * width);
    twist.getStrokeDashArray().setAll(scale.px(DASH_MM), scale.px(GAP_MM));
    head.getStyleClass().add("wire-head");
    round = scale.px(ROUND_MM);
    arrow = scale.px(ARROW_MM);
    getChildren().addAll(wire, twist, head);
    setMouseTransparent(true);
    setManaged(false);
  }

  private static void style(Path path, String styleClass, double width) {
    path.getStyleClass().add(styleClass);
    path.setStrokeWidth(width);
    path.setStrokeLineCap(StrokeLineCap.ROUND);
    path.setStrokeLineJoin(StrokeLineJoin.ROUND);
  }

  /** Leads it across, sagging between its ends. */
  public void sag(double from, double to, double y) {
    List<Point2D> points = new ArrayList<>();
    for (int at = 0; at <= BENDS; at++) {
      double share = (double) at / BENDS;
      double down = 0.22 * (to - from) * Math.sin(Math.PI * share);
      points.add(new Point2D(from + share * (to - from), y + down));
    }
    lead(points);
  }

  /** Leads it from point to point; fewer than two leave it out. */
  public void lead(List<Point2D> points) {
    head.getPoints().clear();
    draw(points);
  }

  /**
   * Leads it from one tile to the next; to the next row round the end of this one and below it.
   *
   * @param gap between the tiles, in pixels
   */
  public void link(Region from, Region to, double gap) {
    double right = from.getLayoutX() + from.getWidth();
    double y = from.getLayoutY() + from.getHeight() / 2;
    double next = to.getLayoutY() + to.getHeight() / 2;
    double aside = 0.35 * gap;
    double low = from.getLayoutY() + from.getHeight() + gap / 2;
    List<Point2D> round =
        List.of(
            new Point2D(right + aside, y),
            new Point2D(right + aside, low),
            new Point2D(-aside, low),
            new Point2D(-aside, next));
    List<Point2D> way = new ArrayList<>(List.of(new Point2D(right, y)));
    way.addAll(y == next ? List.of() : round);
    way.add(new Point2D(to.getLayoutX(), next));
    lead(way);
  }

  /** Leads it from point to point, with an arrow at the last. */
  public void point(List<Point2D> points) {
    int last = points.size() - 1;
    if (last < 1) {
      lead(points);
      return;
    }
    Point2D tip = points.get(last);
    Point2D back = points.get(last - 1).subtract(tip).normalize();
    List<Point2D> shorter = new ArrayList<>(points);
    shorter.set(last, tip.add(back.multiply(0.8 * arrow)));
    draw(shorter);
    head(tip, back);
  }

  private void head(Point2D tip, Point2D back) {
    Point2D aside = new Point2D(-back.getY(), back.getX()).multiply(0.5 * arrow);
    Point2D far = tip.add(back.multiply(arrow));
    Point2D notch = tip.add(back.multiply(0.75 * arrow));
    head.getPoints().clear();
    for (Point2D at : List.of(tip, far.add(aside), notch, far.subtract(aside))) {
      head.getPoints().addAll(at.getX(), at.getY());
    }
  }

  private void draw(List<Point2D> points) {
    for (Path path : List.of(wire, twist)) {
      path.getElements().setAll(points.size() > 1 ? elements(points) : List.of());
    }
  }

  private List<PathElement> elements(List<Point2D> points) {
    List<PathElement> elements = new ArrayList<>();
    Point2D first = points.get(0);
    elements.add(new MoveTo(first.getX(), first.getY()));
    for (int at = 1; at < points.size() - 1; at++) {
      Point2D corner = points.get(at);
      Point2D in = toward(corner, points.get(at - 1));
      Point2D out = toward(corner, points.get(at + 1));
      elements.add(new LineTo(in.getX(), in.getY()));
      elements.add(new QuadCurveTo(corner.getX(), corner.getY(), out.getX(), out.getY()));
    }
    Point2D last = points.get(points.size() - 1);
    elements.add(new LineTo(last.getX(), last.getY()));
    return elements;
  }

  /** Where the round of a corner begins on the way to another point: no further than half-way. */
  private Point2D toward(Point2D corner, Point2D other) {
    double length = corner.distance(other);
    double by = Math.min(round, length / 2);
    return length == 0 ? corner : corner.interpolate(other, by / length);
  }
}
