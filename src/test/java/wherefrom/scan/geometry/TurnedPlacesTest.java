package wherefrom.scan.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TurnedPlacesTest {
  private static final LabelPattern PATTERN = LabelPattern.printed();
  private final TurnedPlaces places = new TurnedPlaces(PATTERN.u, PATTERN.v);

  @Test
  void oneLookAtAPlaceServesEveryTurn() {
    assertThat(places.u.length)
        .isGreaterThan(PATTERN.size)
        .isLessThan(TurnedPlaces.TURNS * PATTERN.size / 3);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void aTurnedTagHasItsPointsWhereItsPoseSays(int quarters) {
    Pose pose = Pose.ofAxes(300, 200, new double[] {5, 1}, new double[] {-0.5, 4});
    Projection straight = new Projection(CameraModel.of(640, 480));
    straight.set(pose);
    Projection turned = new Projection(CameraModel.of(640, 480));
    turned.set(pose.turned(quarters));
    assertThat(turnedBy(quarters, places.u)).hasSize(PATTERN.size);
    for (int at = 0; at < PATTERN.size; at++) {
      turned.project(PATTERN.u[at], PATTERN.v[at]);
      straight.project(turnedBy(quarters, places.u)[at], turnedBy(quarters, places.v)[at]);
      assertThat(Math.hypot(straight.x() - turned.x(), straight.y() - turned.y())).isLessThan(1e-4);
    }
  }

  private float[] turnedBy(int quarters, double[] ofPlaces) {
    float[] grey = new float[ofPlaces.length];
    for (int place = 0; place < grey.length; place++) {
      grey[place] = (float) ofPlaces[place];
    }
    float[] values = new float[PATTERN.size];
    places.turn(quarters, grey, values);
    return values;
  }
}
