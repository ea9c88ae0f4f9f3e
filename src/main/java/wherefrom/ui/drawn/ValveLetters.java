package wherefrom.ui.drawn;

import java.util.List;
import java.util.Set;
import javafx.geometry.BoundingBox;
import javafx.scene.Group;
import javafx.scene.text.Text;
import wherefrom.drawing.Pointer;

/** IN and EX at the valves of a drawing. */
final class ValveLetters {
  private static final Set<String> LETTERS = Set.of("IN", "EX");

  private ValveLetters() {}

  /** They leave where an arrow lies over them: half of them would be read as something else. */
  static void keepFree(Group words, List<Pointer> pointers) {
    List<BoundingBox> arrows =
        pointers.stream().filter(Pointer::arrow).map(ValveLetters::box).toList();
    words.getChildren().stream()
        .filter(node -> node instanceof Text letters && LETTERS.contains(letters.getText()))
        .forEach(
            letters ->
                letters.setVisible(
                    arrows.stream().noneMatch(letters.getBoundsInParent()::intersects)));
  }

  /** From an arrow's tip to its end. */
  private static BoundingBox box(Pointer arrow) {
    double across = arrow.length() * Math.cos(arrow.from());
    double down = arrow.length() * Math.sin(arrow.from());
    return new BoundingBox(
        arrow.tip().x() + Math.min(0, across),
        arrow.tip().y() + Math.min(0, down),
        Math.abs(across),
        Math.abs(down));
  }
}
