package wherefrom.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SpotsTest {
  /** Place cards are numbered so, and parts of one stage come out so. */
  @Test
  void spotsStandKindByKindAndByNumber() {
    for (Layout layout : ReadyLayouts.all()) {
      List<Spot> spots = Spots.all(layout);
      List<Integer> kinds =
          spots.stream()
              .<Integer>map(
                  spot -> spot.match(valve -> 1, bore -> 2, rod -> 3, main -> 4, camBearing -> 5))
              .toList();
      assertThat(kinds).isSorted().contains(1, 2, 3, 4);
      for (int at = 1; at < spots.size(); at++) {
        if (kinds.get(at).equals(kinds.get(at - 1))) {
          assertThat(spots.get(at).number()).isGreaterThanOrEqualTo(spots.get(at - 1).number());
        }
      }
    }
  }
}
