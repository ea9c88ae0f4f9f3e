package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Scene;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import wherefrom.ui.Toolkit;

/** Two halves, of which one may need more than half. */
class TwoHalvesTest {
  private static final Scale SCALE = new Scale(4, 1);
  private static final double WIDTH = 800;

  private static Region least(double width) {
    Region region = new Region();
    region.setMinSize(width, 50);
    return region;
  }

  private static TwoHalves laidOut(Region first, Region second) {
    TwoHalves both = new TwoHalves(SCALE, first, second);
    new Scene(both, WIDTH, 400);
    both.resize(WIDTH, 400);
    both.layout();
    return both;
  }

  @Test
  void eachHasHalfWhereThatIsEnough() {
    Toolkit.on(
        () -> {
          Region first = least(100);
          Region second = least(300);
          laidOut(first, second);
          double half = Math.floor((WIDTH - SCALE.gap()) / 2);
          assertThat(first.getWidth()).isEqualTo(half);
          assertThat(second.getWidth()).isEqualTo(WIDTH - SCALE.gap() - half);
          return 0;
        });
  }

  @Test
  void theWiderHasWhatItNeedsAndNothingReachesOut() {
    Toolkit.on(
        () -> {
          for (boolean isFirst : new boolean[] {true, false}) {
            Region wide = least(560);
            Region slim = least(150);
            TwoHalves both = isFirst ? laidOut(wide, slim) : laidOut(slim, wide);
            assertThat(both.minWidth(-1)).isEqualTo(560 + 150 + SCALE.gap());
            assertThat(wide.getWidth()).isGreaterThanOrEqualTo(560);
            assertThat(slim.getWidth()).isGreaterThanOrEqualTo(150);
            assertThat(wide.getWidth() + slim.getWidth() + SCALE.gap()).isEqualTo(WIDTH);
          }
          return 0;
        });
  }
}
