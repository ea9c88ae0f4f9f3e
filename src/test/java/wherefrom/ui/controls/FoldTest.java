package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Scene;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;

/** Words and a drawing where there is room for both, for one beside the other, or for one. */
class FoldTest {
  private static final double WIDTH = 800;

  private final Touch touch = new Touch(new Scale(4, 1), System::nanoTime);
  private final Region words = Panes.grow(new Region());

  private static Region drawing(double least) {
    Region drawing = new Region();
    drawing.setMinSize(least, 100);
    drawing.setPrefSize(least, 500);
    return drawing;
  }

  private Fold laidOut(Region drawing) {
    words.setMinSize(60, 80);
    Fold fold = new Fold(touch, words, drawing, "Show the drawing");
    new Scene(fold, WIDTH, 300);
    fold.resize(WIDTH, 300);
    fold.layout();
    return fold;
  }

  @Test
  void aDrawingBesideTheWordsHasHalfWhereTheyHaveRoom() {
    Toolkit.on(
        () -> {
          Region drawing = drawing(200);
          laidOut(drawing);
          assertThat(drawing.getWidth()).isEqualTo(Math.floor((WIDTH - touch.scale().gap()) / 2));
          Region wide = drawing(500);
          laidOut(wide);
          assertThat(wide.getWidth()).isEqualTo(500);
          return 0;
        });
  }

  @Test
  void wordsAreNoNarrowColumn() {
    Toolkit.on(
        () -> {
          Region drawing = drawing(680);
          Fold fold = laidOut(drawing);
          assertThat(fold.getChildrenUnmodifiable()).contains(words).doesNotContain(drawing);
          return 0;
        });
  }

  @Test
  void whatMustBeReadTurnsToTheWords() {
    Toolkit.on(
        () -> {
          Region drawing = drawing(700);
          Fold fold = laidOut(drawing);
          Touch.press(fold.getChildrenUnmodifiable().get(1));
          fold.layout();
          assertThat(fold.getChildrenUnmodifiable()).contains(drawing);
          fold.showWords();
          fold.layout();
          assertThat(fold.getChildrenUnmodifiable()).contains(words).doesNotContain(drawing);
          return 0;
        });
  }
}
