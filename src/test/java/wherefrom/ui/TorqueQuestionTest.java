package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.text.Text;
import javafx.scene.text.TextBoundsType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleWindow;

/** Where large letters leave room for the bolts or for the words, a question is read at once. */
class TorqueQuestionTest {
  /** How thick a bolt's rim is drawn. */
  private static final double RIM_PX = 3;

  private static String shown(String shot, Glass glass) {
    return Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window(glass, 200, shot);
          String words = window.words();
          window.shell.close();
          return words;
        });
  }

  /** A figure that its rim runs through cannot be read: each corner of it lies inside. */
  @ParameterizedTest
  @CsvSource({"upright, 200", "upright, 150", "laptop, 200", "guessed, 200", "small, 100"})
  void theFiguresOfBoltsKeepOffTheirRims(String glass, int percent) {
    Toolkit.on(
        () -> {
          SampleWindow window = ShownShot.window(glass, percent, "torque-card");
          Set<Node> figures = window.scene.getRoot().lookupAll(".bolt .ink");
          assertThat(figures).hasSizeGreaterThanOrEqualTo(10);
          for (Node figure : figures) {
            Node bolt = figure;
            while (!bolt.getStyleClass().contains("bolt")) {
              bolt = bolt.getParent();
            }
            Bounds disc = bolt.localToScene(bolt.getLayoutBounds());
            Text text = (Text) figure;
            text.setBoundsType(TextBoundsType.VISUAL);
            Bounds ink = text.localToScene(text.getLayoutBounds());
            double corner = Math.hypot(ink.getWidth() / 2, ink.getHeight() / 2);
            assertThat(corner).as(text.getText()).isLessThan(disc.getWidth() / 2 - RIM_PX);
          }
          window.shell.close();
          return 0;
        });
  }

  @Test
  void theQuestionComesBeforeTheBoltsThatWereShown() {
    assertThat(shown("torque-card", Glass.SMALL)).contains("Show the bolts");
    assertThat(shown("torque-question", Glass.SMALL)).contains("OUT OF TURN?", "Bolt 5 is next");
    assertThat(shown("torque-question", Glass.UPRIGHT)).contains("OUT OF TURN?");
  }
}
