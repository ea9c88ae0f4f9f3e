package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;

/** A picture has the room that a list leaves, and takes none from it. */
class UnderTest {
  private static final double GAP = 10;

  private static Region sized(double width, double height) {
    Region region = new Region();
    region.setMinSize(width, height);
    region.setPrefSize(width, height);
    region.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    return region;
  }

  private final Region list = sized(100, 60);
  private final Region picture = sized(40, 30);

  private void layOut(double height) {
    Under under = new Under(list, picture, GAP);
    under.resize(200, height);
    under.layout();
  }

  @Test
  void thePictureStandsInTheMiddleOfWhatTheListLeaves() {
    layOut(60 + 30 + 4 * GAP);
    assertThat(picture.isVisible()).isTrue();
    assertThat(list.getHeight()).isEqualTo(60);
    assertThat(picture.getLayoutY()).isEqualTo(60 + 2 * GAP);
    assertThat(picture.getLayoutX()).isEqualTo(80);
    assertThat(picture.getWidth()).isEqualTo(40);
  }

  @Test
  void withoutRoomForItTheListHasAll() {
    layOut(60 + 30 + 2 * GAP - 1);
    assertThat(picture.isVisible()).isFalse();
    assertThat(list.getHeight()).isEqualTo(60 + 30 + 2 * GAP - 1);
  }
}
