package wherefrom.ui.drawn;

import java.util.List;
import javafx.scene.Group;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.Shape;

/** Cylinder numbers that a ring reaches: they lie above it, as a ring would cut them. */
final class NumbersAbove {
  private NumbersAbove() {}

  /**
   * @param above what lies above all else
   * @param words the words of the drawing, one node for each
   * @param pointing the rings that are shown
   */
  static void show(Group above, Group words, Drawing drawn, List<Shape> pointing) {
    List<Shape> numbers = drawn.numbersUnder(pointing);
    above.getChildren().addAll(ShapeNodes.of(numbers));
    for (int at = 0; at < drawn.words().size(); at++) {
      words.getChildren().get(at).setVisible(!numbers.contains(drawn.words().get(at)));
    }
  }
}
