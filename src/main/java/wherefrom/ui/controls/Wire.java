package wherefrom.ui.controls;

import java.util.List;
import javafx.geometry.Point2D;
import javafx.scene.Group;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;

/** The wire: from here to there. It takes no touch. */
public final class Wire extends Group {
  /** The twist is a third of the wire's width, in dashes of 1.2 mm with 0.85 mm between. */
  private static final double TWIST = 0.34;

  private static final double WIDTH_MM = 0.85;
  private static final double DASH_MM = 1.2;
  private static final double GAP_MM = 0.85;

  private final Path wire = new Path();
  private final Path twist = new Path();

  public Wire(Scale scale) {
    double width = scale.px(WIDTH_MM);
    style(wire, "wire", width);
    style(twist, "wire-twist", TWIST * width);
    twist.getStrokeDashArray().setAll(scale.px(DASH_MM), scale.px(GAP_MM));
    getChildren().addAll(wire, twist);
    setMouseTransparent(true);
    setManaged(false);
  }

  private static void style(Path path, String styleClass, double width) {
    path.getStyleClass().add(styleClass);
    path.setStrokeWidth(width);
    path.setStrokeLineCap(StrokeLineCap.ROUND);
    path.setStrokeLineJoin(StrokeLineJoin.ROUND);
  }

  /** Leads it from point to point; fewer than two leave it out. */
  public void lead(List<Point2D> points) {
    for (Path path : List.of(wire, twist)) {
      path.getElements().clear();
      for (int at = 0; points.size() > 1 && at < points.size(); at++) {
        path.getElements().add(element(points.get(at), at == 0));
      }
    }
  }

  private static PathElement element(Point2D point, boolean first) {
    return first ? new MoveTo(point.getX(), point.getY()) : new LineTo(point.getX(), point.getY());
  }
}
