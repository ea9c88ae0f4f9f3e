package wherefrom.workings.maths;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class WheelAngleTest {
  private static WheelAngle at(double degrees) {
    return new WheelAngle(DualNumber.of(degrees));
  }

  /** The referee: the sum of two unit vectors points midway, their cross product says the way. */
  @Test
  void middleAndWayAgreeWithVectorsInThePlane() {
    SplittableRandom random = new SplittableRandom(360);
    for (int run = 0; run < 10_000; run++) {
      double one = 720 * (random.nextDouble() - 0.5);
      double other = one + 358 * (random.nextDouble() - 0.5) + 360 * random.nextInt(-1, 2);
      double a = Math.toRadians(one);
      double b = Math.toRadians(other);
      double way =
          Math.toDegrees(
              Math.atan2(
                  Math.cos(a) * Math.sin(b) - Math.sin(a) * Math.cos(b),
                  Math.cos(a) * Math.cos(b) + Math.sin(a) * Math.sin(b)));
      assertThat(at(other).from(at(one)).toDouble()).isCloseTo(way, within(1e-9));
      double middle = Math.toRadians(at(one).midway(at(other)).toDouble());
      assertThat(Math.cos(middle) * (Math.sin(a) + Math.sin(b)))
          .isCloseTo(Math.sin(middle) * (Math.cos(a) + Math.cos(b)), within(1e-9));
      assertThat(Math.cos(middle - a)).isGreaterThan(0);
    }
  }

  @Test
  void aWholeTurnChangesNothingAndTheWheelsOwnNumbersAreKept() {
    assertThat(at(356).midway(at(358)).toDouble()).isEqualTo(357);
    assertThat(at(-4).midway(at(-2)).toDouble()).isEqualTo(-3);
    assertThat(at(340).midway(at(24)).toDouble()).isEqualTo(2);
    assertThat(at(24).midway(at(340)).toDouble()).isEqualTo(2);
    assertThat(at(350).midway(at(10)).toDouble()).isEqualTo(0);
    assertThat(at(-350).from(at(10)).toDouble()).isEqualTo(0);
    assertThat(WheelAngle.near(350, 0)).isEqualTo(-10);
    assertThat(WheelAngle.near(-220, 108)).isEqualTo(140);
    assertThat(at(90).isOpposite(at(270))).isTrue();
    assertThat(at(90).isOpposite(at(269))).isFalse();
  }

  @Test
  void uncertaintyIsCarriedThroughOverZero() {
    DualNumber before = DualNumber.ofInput(DoubleDouble.of(340), 0, 2);
    DualNumber after = DualNumber.ofInput(DoubleDouble.of(24), 1, 2);
    DualNumber middle = new WheelAngle(before).midway(new WheelAngle(after));
    assertThat(middle.slope(0)).isEqualTo(0.5);
    assertThat(middle.slope(1)).isEqualTo(0.5);
    DualNumber way = new WheelAngle(after).from(new WheelAngle(before));
    assertThat(way.slope(0)).isEqualTo(-1);
    assertThat(way.slope(1)).isEqualTo(1);
  }
}
