package wherefrom.workings.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.quantity.Unit;

class OutlineTest {
  private static Outline circle(double radius, int corners) {
    List<Outline.Corner> points = new ArrayList<>();
    for (int i = 0; i < corners; i++) {
      double turn = 2 * Math.PI * i / corners;
      points.add(new Outline.Corner(7 + radius * Math.cos(turn), radius * Math.sin(turn) - 3));
    }
    return new Outline(points);
  }

  @Test
  void squareAndCircle() {
    Outline square =
        new Outline(
            List.of(
                new Outline.Corner(1, 1),
                new Outline.Corner(26.4, 1),
                new Outline.Corner(26.4, 26.4),
                new Outline.Corner(1, 26.4)));
    assertThat(square.area().in(Unit.SQUARE_INCH)).isCloseTo(1, within(1e-12));
    assertThat(circle(50.8, 720).area().in(Unit.SQUARE_MILLIMETRE))
        .isCloseTo(Math.PI * 50.8 * 50.8, within(0.2));
    // The full bore disc of 4 in bounds any chamber's opening: 0.20593 cc for each 0.001 in.
    assertThat(circle(50.8, 20_000).area().in(Unit.CC_PER_THOU)).isCloseTo(0.20593, within(5e-6));
  }

  @Test
  void theWayRoundDoesNotMatter() {
    Outline there = circle(40, 24);
    List<Outline.Corner> back = new ArrayList<>(there.corners());
    Collections.reverse(back);
    assertThat(new Outline(back).area().in(Unit.SQUARE_MILLIMETRE))
        .isCloseTo(there.area().in(Unit.SQUARE_MILLIMETRE), within(1e-9));
  }

  @Test
  void twoCornersAreNoOutline() {
    assertThatThrownBy(() -> new Outline(List.of(new Outline.Corner(0, 0))))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
