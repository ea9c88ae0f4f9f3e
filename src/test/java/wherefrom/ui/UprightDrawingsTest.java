package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.job.settings.Appearance;
import wherefrom.ui.drawn.DrawnEngine;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleWindow;

/** Upright glass with the largest letters has room for the drawing of what is done on it. */
class UprightDrawingsTest {
  private static void at(String name, Consumer<SampleWindow> looked) {
    ShownShot.look(Glass.UPRIGHT, 200, Appearance.DARK, name, looked);
  }

  private static List<Node> drawings(SampleWindow window) {
    return ShownShot.seen(window.scene.getRoot())
        .filter(DrawnEngine.class::isInstance)
        .filter(node -> node.getLayoutBounds().getHeight() > 0)
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "together-stop,Rod shell. The right part is on the bench.",
    "together-stop-cylinder,Pushrod. The right part is on the bench.",
    "together-stop-main,Upper and lower shells are never exchanged.",
    "together-stop-elsewhere,Pushrod. One part cannot be in two places."
  })
  void aStopShowsBothPlacesAndSaysWhy(String name, String why) {
    at(
        name,
        window -> {
          assertThat(drawings(window)).hasSize(1);
          assertThat(window.words().replace('\n', ' ')).contains(why);
        });
  }

  @Test
  void wordsThatHaveNoRoomInAnyCaseTakeNoneFromThePicture() {
    at("together-resumed-settled", window -> assertThat(drawings(window)).hasSize(1));
  }

  @ParameterizedTest
  @ValueSource(strings = {"take-apart", "take-apart-out", "take-apart-shell", "shared-away"})
  void takingApartShowsWhereThePartIs(String name) {
    at(name, window -> assertThat(drawings(window)).hasSize(1));
  }
}
