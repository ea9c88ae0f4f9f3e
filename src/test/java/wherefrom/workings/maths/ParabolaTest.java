package wherefrom.workings.maths;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class ParabolaTest {
  private static final double[] DEGREES = {-15, -10, -5, 0, 5, 10, 15};

  private static double[] curve(double at, double least, double bend) {
    double[] ys = new double[DEGREES.length];
    for (int i = 0; i < ys.length; i++) {
      ys[i] = least + bend * (DEGREES[i] - at) * (DEGREES[i] - at);
    }
    return ys;
  }

  /** 2.00 mm, least at 7 degrees after: every point lies on it, so it is found again. */
  @Test
  void aCurveIsFoundAgain() {
    Parabola.Lowest lowest = new Parabola(DEGREES, curve(7, 2, 0.01)).findLowest().orElseThrow();
    assertThat(lowest.x()).isCloseTo(7, within(1e-9));
    assertThat(lowest.y()).isCloseTo(2, within(1e-9));
  }

  @Test
  void oneThatGoesOnFallingHasNoLeastHere() {
    assertThat(new Parabola(DEGREES, curve(20, 2, 0.01)).findLowest()).isEmpty();
    assertThat(new Parabola(DEGREES, curve(0, 2, -0.01)).findLowest()).isEmpty();
  }

  @Test
  void threePointsAreNoFit() {
    assertThatThrownBy(() -> new Parabola(new double[] {0, 5, 10}, new double[] {2, 1, 2}))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Parabola(new double[] {0, 0, 10, 10}, new double[] {2, 1, 2, 1}))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** The spread of 20,000 noisy curves against what the fit says of itself. */
  @Test
  void whatEachReadingIsOffGoesInAsDrawnCurvesSay() {
    double[] exact = curve(4, 2, 0.01);
    Parabola.Lowest told = new Parabola(DEGREES, exact).findLowest().orElseThrow();
    Random random = new Random(4);
    double off = 0.005;
    double heights = 0;
    double places = 0;
    int runs = 20_000;
    for (int run = 0; run < runs; run++) {
      double[] noisy = exact.clone();
      for (int at = 0; at < noisy.length; at++) {
        noisy[at] += off * random.nextGaussian();
      }
      Parabola.Lowest one = new Parabola(DEGREES, noisy).findLowest().orElseThrow();
      heights += (one.y() - 2) * (one.y() - 2);
      places += (one.x() - 4) * (one.x() - 4);
    }
    assertThat(Math.sqrt(heights / runs)).isCloseTo(off * told.share(), within(0.03 * off));
    assertThat(Math.sqrt(places / runs))
        .isCloseTo(off * told.shift(), within(0.03 * off * told.shift()));
  }
}
