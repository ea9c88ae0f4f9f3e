package wherefrom.ui.controls;

import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;
import wherefrom.rules.Cue;

/** The figures that stand for a verdict: tick in a circle, octagon, question mark in a square. */
public final class CueMark {
  private CueMark() {}

  /**
   * Draws the figure.
   *
   * @param side in pixels
   */
  public static Node of(Cue cue, double side) {
    Node mark =
        switch (cue) {
          case RIGHT -> right(side);
          case STOP -> stop(side);
          case ASK -> ask(side);
        };
    mark.setMouseTransparent(true);
    return mark;
  }

  private static Node right(double side) {
    double line = side * 0.07;
    Shape circle = line(new Circle(side / 2, side / 2, (side - line) / 2), line);
    Polyline tick =
        new Polyline(side * 0.26, side * 0.52, side * 0.44, side * 0.7, side * 0.75, side * 0.32);
    line(tick, side * 0.09);
    return new Group(circle, tick);
  }

  private static Node stop(double side) {
    Shape octagon = FigureOutline.regular(8, 0.5, side);
    octagon.getStyleClass().add("octagon");
    Shape rim = FigureOutline.regular(8, 0.5, side * 0.86);
    rim.getStyleClass().add("octagon-rim");
    rim.setStrokeWidth(side * 0.03);
    rim.relocate(side * 0.07 - side * 0.015, side * 0.07 - side * 0.015);
    Rectangle bar = new Rectangle(side * 0.22, side * 0.43, side * 0.56, side * 0.14);
    bar.getStyleClass().add("octagon-bar");
    return new Group(octagon, rim, bar);
  }

  private static Node ask(double side) {
    double line = side * 0.06;
    Shape square = line(new Rectangle(line / 2, line / 2, side - line, side - line), line);
    Text mark = new Text("?");
    mark.getStyleClass().add("ink");
    mark.setFont(Fonts.of(side * 0.75, true));
    mark.setX((side - mark.getLayoutBounds().getWidth()) / 2);
    mark.setY(side * (0.5 + 0.75 * Scale.CAPITAL / 2));
    return new Group(square, mark);
  }

  private static Shape line(Shape shape, double width) {
    shape.getStyleClass().add("line");
    shape.setStrokeWidth(width);
    return shape;
  }
}
