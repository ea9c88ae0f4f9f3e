package wherefrom.ui.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;
import javafx.scene.text.TextBoundsType;

/** Everything that is painted, in the order in which it is painted. */
final class Painted {
  private final List<Node> order = new ArrayList<>();

  Painted(Parent root) {
    collect(root);
  }

  private void collect(Node node) {
    if (!node.isVisible() || node.getOpacity() == 0) {
      return;
    }
    order.add(node);
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(this::collect);
    }
  }

  List<Node> all() {
    return order;
  }

  /** What is painted after a node, the node's own parts among it. */
  List<Node> after(Node node) {
    return order.subList(order.indexOf(node) + 1, order.size());
  }

  List<Text> texts() {
    return order.stream()
        .filter(node -> node instanceof Text text && !text.getText().isBlank())
        .map(Text.class::cast)
        .toList();
  }

  /** The colour that lies under a point of a node, as painted before the node. */
  Optional<Color> under(Node node, Point2D inScene) {
    Optional<Color> colour = Optional.empty();
    for (Node earlier : order) {
      if (earlier.equals(node)) {
        return colour;
      }
      if (!(earlier instanceof Text) && covers(earlier, inScene)) {
        colour = fill(earlier).isPresent() ? fill(earlier) : colour;
      }
    }
    return colour;
  }

  private static boolean covers(Node node, Point2D inScene) {
    return node.contains(node.sceneToLocal(inScene));
  }

  /** What a node is filled with, where that is one opaque colour. */
  static Optional<Color> fill(Node node) {
    if (node instanceof Shape shape) {
      return opaque(shape.getFill());
    }
    if (node instanceof Region region && region.getBackground() != null) {
      List<BackgroundFill> fills = region.getBackground().getFills();
      return fills.isEmpty() ? Optional.empty() : opaque(fills.get(fills.size() - 1).getFill());
    }
    return Optional.empty();
  }

  /** The outermost colour of a node: that of its outline. */
  static Optional<Color> outline(Region region) {
    if (region.getBackground() == null || region.getBackground().getFills().isEmpty()) {
      return Optional.empty();
    }
    return opaque(region.getBackground().getFills().get(0).getFill());
  }

  private static Optional<Color> opaque(Object paint) {
    return paint instanceof Color colour && colour.getOpacity() == 1
        ? Optional.of(colour)
        : Optional.empty();
  }

  static Bounds inScene(Node node) {
    return node.localToScene(node.getLayoutBounds());
  }

  /** What the letters of a text cover, without the air of their lines. */
  static Bounds ink(Text text) {
    if (text.getBoundsType() == TextBoundsType.VISUAL) {
      return inScene(text);
    }
    Text seen = new Text(text.getText());
    seen.setFont(text.getFont());
    seen.setWrappingWidth(text.getWrappingWidth());
    seen.setBoundsType(TextBoundsType.VISUAL);
    seen.setX(text.getX());
    // Where it stands by its top, that is the top of its line and not of its letters.
    double line = text.getTextOrigin() == VPos.TOP ? text.getBaselineOffset() : 0;
    seen.setY(text.getY() + line);
    return text.localToScene(seen.getLayoutBounds());
  }

  static Point2D middle(Node node) {
    Bounds bounds = inScene(node);
    return new Point2D(bounds.getCenterX(), bounds.getCenterY());
  }
}
