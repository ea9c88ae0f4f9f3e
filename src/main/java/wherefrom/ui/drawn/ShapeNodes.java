package wherefrom.ui.drawn;

import java.util.ArrayList;
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
import wherefrom.drawing.PathStep;
import wherefrom.drawing.Role;
import wherefrom.drawing.Shape;
import wherefrom.ui.controls.Fonts;
import wherefrom.ui.controls.Scale;

/** Shapes as nodes. Their colors are in the style sheet, by the class of their role. */
final class ShapeNodes {
  private ShapeNodes() {}

  static List<Node> of(List<Shape> shapes) {
    Nodes nodes = new Nodes();
    shapes.forEach(shape -> shape.draw(nodes));
    return nodes.made;
  }

  private static Node lined(Shape shape, javafx.scene.shape.Shape node) {
    node.getStyleClass().add(styleClass(shape.role()));
    // A path has a black line of its own, in the dark look too: the style sheet says who has one.
    node.setStroke(null);
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

  /** Makes the nodes of shapes. */
  private static final class Nodes implements Shape.Pen<RuntimeException> {
    private final List<Node> made = new ArrayList<>();

    @Override
    public void outline(Shape.Outline outline) {
      Elements elements = new Elements(new ArrayList<>());
      outline.steps().forEach(step -> step.draw(elements));
      made.add(lined(outline, new Path(elements.all())));
    }

    @Override
    public void disc(Shape.Disc disc) {
      made.add(lined(disc, new Circle(disc.x(), disc.y(), disc.radius())));
    }

    @Override
    public void slab(Shape.Slab slab) {
      Bounds box = slab.bounds();
      Rectangle rectangle = new Rectangle(box.x(), box.y(), box.width(), box.height());
      rectangle.setArcWidth(2 * slab.radius());
      rectangle.setArcHeight(2 * slab.radius());
      made.add(lined(slab, rectangle));
    }

    @Override
    public void words(Shape.Words words) {
      made.add(text(words));
    }
  }

  /** Adds the elements of steps to those of a path. */
  private record Elements(List<PathElement> all) implements PathStep.Pen<RuntimeException> {
    @Override
    public void move(PathStep.Move move) {
      all.add(new MoveTo(move.x(), move.y()));
    }

    @Override
    public void line(PathStep.Line line) {
      all.add(new LineTo(line.x(), line.y()));
    }

    @Override
    public void curve(PathStep.Curve curve) {
      all.add(
          new CubicCurveTo(curve.x1(), curve.y1(), curve.x2(), curve.y2(), curve.x(), curve.y()));
    }

    @Override
    public void close(PathStep.Close close) {
      all.add(new ClosePath());
    }
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
