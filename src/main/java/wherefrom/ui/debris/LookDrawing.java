package wherefrom.ui.debris;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.CubicCurve;
import javafx.scene.shape.Ellipse;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import wherefrom.rules.debris.DebrisLook;

/**
 * How debris looks, drawn in a strip twice as wide as it is high: in the colors that it has, with a
 * line round it in the ink of the look, for dark chips lie on a dark plate too.
 */
final class LookDrawing {
  private static final String LINE = "debris-line";
  private static final Color STEEL = Color.web("#8d959c");
  private static final Color COPPER = Color.web("#b4642d");
  private static final Color MILK = Color.web("#b59a77");

  /** Where pieces lie: across and down, in parts of the height. */
  private static final double[][] SPOTS = {
    {0.25, 0.35}, {0.6, 0.7}, {0.95, 0.3}, {1.3, 0.65}, {1.7, 0.4}, {0.35, 0.8}, {1.55, 0.85}
  };

  private LookDrawing() {}

  static Node of(DebrisLook look, double high) {
    List<Shape> shapes =
        new ArrayList<>(
            switch (look) {
              case PLASTIC -> crumbs(Color.web("#f3ead2"));
              case ALUMINIUM_WITH_PLASTIC -> mixed();
              case ALUMINIUM -> slivers();
              case MAGNETIC_FLAKES -> needles();
              case GREY_PASTE -> paste();
              case SILVER_GLITTER -> glitter(Color.web("#dfe4e8"), 0.045);
              case COPPER -> glitter(COPPER, 0.07);
              case SWARF -> curls();
              case BROWN_MILK -> milk();
              case SEALANT -> strips();
            });
    Rectangle room = new Rectangle(2, 1, Color.TRANSPARENT);
    shapes.add(0, room);
    Group group = new Group();
    group.getChildren().addAll(shapes);
    // What is told of the bounds of so small lines is far more than is seen of them.
    group.setClip(new Rectangle(2, 1));
    group.getTransforms().add(new javafx.scene.transform.Scale(high, high));
    return new Group(group);
  }

  private static <S extends Shape> S line(S shape, Color fill, double width) {
    shape.setFill(fill);
    shape.setStrokeWidth(width);
    if (width > 0) {
      shape.getStyleClass().add(LINE);
    }
    return shape;
  }

  private static List<Shape> crumbs(Color fill) {
    List<Shape> shapes = new ArrayList<>();
    for (double[] at : SPOTS) {
      double x = at[0];
      double y = at[1];
      Polygon crumb =
          new Polygon(
              x - 0.13, y + 0.02, x - 0.03, y - 0.13, x + 0.12, y - 0.06, x + 0.08, y + 0.11);
      shapes.add(line(crumb, fill, 0.03));
    }
    return shapes;
  }

  private static List<Shape> mixed() {
    List<Shape> shapes = crumbs(Color.web("#f3ead2"));
    shapes.addAll(slivers());
    return shapes;
  }

  private static List<Shape> slivers() {
    List<Shape> shapes = new ArrayList<>();
    for (int at = 0; at < SPOTS.length; at += 2) {
      double x = SPOTS[at][0] + 0.22;
      double y = SPOTS[at][1];
      Polygon sliver = new Polygon(x - 0.1, y, x, y - 0.06, x + 0.11, y, x, y + 0.06);
      shapes.add(line(sliver, Color.web("#c9d0d6"), 0.02));
    }
    return shapes;
  }

  private static List<Shape> needles() {
    List<Shape> shapes = new ArrayList<>();
    double turn = 0;
    for (double[] at : SPOTS) {
      turn += 0.9;
      double across = 0.14 * Math.cos(turn);
      double down = 0.14 * Math.sin(turn);
      Line needle = new Line(at[0] - across, at[1] - down, at[0] + across, at[1] + down);
      shapes.add(line(needle, STEEL, 0.07));
    }
    return shapes;
  }

  private static List<Shape> paste() {
    return List.of(
        line(new Ellipse(1, 0.55, 0.75, 0.33), STEEL, 0.02),
        line(new Ellipse(0.85, 0.48, 0.4, 0.13), STEEL.brighter(), 0));
  }

  private static List<Shape> glitter(Color fill, double size) {
    List<Shape> shapes = new ArrayList<>();
    for (double[] at : SPOTS) {
      for (int near = 0; near < 3; near++) {
        double x = at[0] + 0.13 * near - 0.1;
        double y = at[1] + (near == 1 ? -0.14 : 0.06);
        shapes.add(line(new Circle(x, y, size), fill, 0.02));
      }
    }
    return shapes;
  }

  private static List<Shape> curls() {
    List<Shape> shapes = new ArrayList<>();
    for (int at = 0; at < 4; at++) {
      double x = 0.15 + 0.45 * at;
      double y = at % 2 == 0 ? 0.35 : 0.65;
      CubicCurve curl =
          new CubicCurve(x, y, x + 0.45, y - 0.5, x - 0.15, y + 0.6, x + 0.35, y + 0.1);
      shapes.add(line(curl, Color.TRANSPARENT, 0.06));
    }
    return shapes;
  }

  private static List<Shape> milk() {
    return List.of(
        line(new Ellipse(1, 0.6, 0.8, 0.32), MILK, 0.03),
        line(new Circle(0.75, 0.5, 0.09), MILK.brighter(), 0),
        line(new Circle(1.2, 0.62, 0.12), MILK.brighter(), 0));
  }

  private static List<Shape> strips() {
    List<Shape> shapes = new ArrayList<>();
    for (int at = 0; at < 3; at++) {
      Rectangle strip = new Rectangle(0.2 + 0.55 * at, at == 1 ? 0.6 : 0.25, 0.5, 0.14);
      strip.setRotate(at * 35 - 30);
      shapes.add(line(strip, Color.web("#5f7897"), 0.04));
    }
    return shapes;
  }
}
