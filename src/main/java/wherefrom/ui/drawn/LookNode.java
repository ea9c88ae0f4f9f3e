package wherefrom.ui.drawn;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.css.PseudoClass;
import javafx.scene.Group;
import javafx.scene.Node;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.Shape;

/** Shapes of one part; how it looks is a pseudo-class of their group. */
class LookNode extends Group {
  private static final Map<DrawnAs, PseudoClass> LOOKS = new EnumMap<>(DrawnAs.class);
  private static final List<Double> OUT_DASHES = List.of(3.0, 2.5);

  static {
    for (DrawnAs look : DrawnAs.values()) {
      String name = look.name().toLowerCase(Locale.ROOT);
      LOOKS.put(look, PseudoClass.getPseudoClass(name));
    }
  }

  private final List<Shape> shapes;
  private DrawnAs look = DrawnAs.IN;

  LookNode(List<Shape> shapes, DrawnAs first) {
    this.shapes = List.copyOf(shapes);
    getStyleClass().add("part");
    getChildren().addAll(ShapeNodes.of(shapes));
    pseudo(look, true);
    look(first);
  }

  final DrawnAs look() {
    return look;
  }

  /** Shows it in another look; nothing is touched where it is the same. */
  final void look(DrawnAs newLook) {
    if (newLook == look) {
      return;
    }
    pseudo(look, false);
    look = newLook;
    pseudo(look, true);
    for (int at = 0; at < shapes.size(); at++) {
      draw(shapes.get(at), getChildren().get(at));
    }
  }

  private void draw(Shape shape, Node node) {
    node.setVisible(look.shows(shape.role()));
    if (shape.width() > 0 && look != DrawnAs.ABSENT) {
      javafx.scene.shape.Shape drawn = (javafx.scene.shape.Shape) node;
      double width = shape.width() * look.weight();
      drawn.setStrokeWidth(width);
      ShapeNodes.dash(drawn, look == DrawnAs.OUT ? OUT_DASHES : List.of(), width);
    }
  }

  private void pseudo(DrawnAs which, boolean on) {
    PseudoClass pseudo = LOOKS.get(which);
    if (pseudo != null) {
      pseudoClassStateChanged(pseudo, on);
    }
  }
}
