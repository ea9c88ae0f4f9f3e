package wherefrom.ui.drawn;

import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.shape.Circle;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.CubicCurveTo;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Text;
import javafx.scene.text.TextBoundsType;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.Role;
import wherefrom.drawing.Shape;
import wherefrom.drawing.Step;
import wherefrom.ui.controls.Fonts;
import wherefrom.ui.controls.Scale;

/** Shapes as nodes. Their colors are in the style sheet, by the class of their role. */
final class ShapeNodes {
  private ShapeNodes() {}

  static List<Node> of(List<Shape> shapes) {
    return shapes.stream().map(ShapeNodes::of).toList();
  }

  static Node of(Shape shape) {
    if (shape instanceof Shape.Words words) {
      return text(words);
    }
    javafx.scene.shape.Shape node = figure(shape);
    node.getStyleClass().add(styleClass(shape.role()));
    if (shape.width() > 0) {
      node.setStrokeWidth(shape.width());
      node.setStrokeLineCap(shape.role() == Role.TICK ? StrokeLineCap.ROUND : StrokeLineCap.BUTT);
      node.setStrokeLineJoin(StrokeLineJoin.ROUND);
      dash(node, shape.role().dashes(), shape.width());
    }
    return node;
  }

  /** The name of a role in the style sheet: {@code drawn-dashed-plate}. */
  static String styleClass(Role role) {
    return "drawn-" + role.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * Sets dashes.
   *
   * @param dashes in widths of the line; none for a whole line
   */
  static void dash(javafx.scene.shape.Shape node, List<Double> dashes, double width) {
    if (dashes.isEmpty() && node.getStrokeDashArray().isEmpty()) {
      return;
    }
    node.getStrokeDashArray().setAll(dashes.stream().map(dash -> dash * width).toList());
  }

  private static javafx.scene.shape.Shape figure(Shape shape) {
    if (shape instanceof Shape.Disc disc) {
      return new Circle(disc.x(), disc.y(), disc.radius());
    }
    if (shape instanceof Shape.Slab slab) {
      Bounds box = slab.bounds();
      Rectangle rectangle = new Rectangle(box.x(), box.y(), box.width(), box.height());
      rectangle.setArcWidth(2 * slab.radius());
      rectangle.setArcHeight(2 * slab.radius());
      return rectangle;
    }
    List<Step> steps = ((Shape.Outline) shape).steps();
    PathElement[] elements = new PathElement[steps.size()];
    for (int at = 0; at < elements.length; at++) {
      elements[at] = element(steps.get(at));
    }
    return new Path(elements);
  }

  private static PathElement element(Step step) {
    if (step instanceof Step.Move move) {
      return new MoveTo(move.x(), move.y());
    }
    if (step instanceof Step.Line line) {
      return new LineTo(line.x(), line.y());
    }
    if (step instanceof Step.Curve curve) {
      return new CubicCurveTo(curve.x1(), curve.y1(), curve.x2(), curve.y2(), curve.x(), curve.y());
    }
    return new ClosePath();
  }

  private static Text text(Shape.Words words) {
    Text text = new Text(words.text());
    text.setFont(Fonts.of(words.size(), words.bold()));
    text.setBoundsType(TextBoundsType.VISUAL);
    text.getStyleClass().add(styleClass(words.role()));
    double left = text.getLayoutBounds().getMinX();
    double wide = text.getLayoutBounds().getWidth();
    text.setX(
        switch (words.side()) {
          case BEGIN -> words.x() - left;
          case MIDDLE -> words.x() - left - wide / 2;
          case END -> words.x() - left - wide;
        });
    text.setY(words.y() + words.size() * Scale.CAPITAL / 2);
    return text;
  }
}
