package wherefrom.ui.drawn;

import java.util.List;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Text;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.Shape;

/**
 * Cylinder numbers that a ring reaches: they lie above it, as a ring would cut them, each in a halo
 * of its own, as black on black would be cut as well.
 */
final class NumbersAbove {
  /** The halo's line, in the size of the number: half of it is seen. */
  private static final double HALO = 0.26;

  private NumbersAbove() {}

  /**
   * @param above what lies above all else
   * @param words the words of the drawing, one node for each
   * @param pointing the rings that are shown
   */
  static void show(Group above, Group words, Drawing drawn, List<Shape> pointing) {
    List<Shape> numbers = drawn.numbersUnder(pointing);
    above.getChildren().addAll(halos(numbers));
    above.getChildren().addAll(ShapeNodes.of(numbers));
    for (int at = 0; at < drawn.words().size(); at++) {
      words.getChildren().get(at).setVisible(!numbers.contains(drawn.words().get(at)));
    }
  }

  private static List<Node> halos(List<Shape> numbers) {
    return ShapeNodes.of(numbers).stream()
        .filter(Text.class::isInstance)
        .map(number -> halo((Text) number))
        .toList();
  }

  /** The outline of a number, grown; it is a shape and no word. */
  private static Node halo(Text number) {
    number.setStroke(Color.BLACK);
    number.setStrokeWidth(HALO * number.getFont().getSize());
    number.setStrokeLineJoin(StrokeLineJoin.ROUND);
    javafx.scene.shape.Shape halo = javafx.scene.shape.Shape.union(number, number);
    halo.setStroke(null);
    halo.getStyleClass().add("drawn-number-halo");
    return halo;
  }
}
