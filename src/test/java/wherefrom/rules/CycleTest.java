package wherefrom.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wherefrom.engine.ReadyLayouts;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;

class CycleTest {
  private static final List<Place> PLACES =
      Places.of(ReadyLayouts.find("v8-odd-even").orElseThrow(), Set.of(PartKind.PUSHROD));

  private static Part part(int at) {
    return new Part(at + 1, PLACES.get(at), 1, 1, false);
  }

  @Test
  void whatSitsRightNeedsNothing() {
    assertThat(Cycle.of(Map.of(PLACES.get(0), part(0)))).isEmpty();
  }

  @Test
  void twoSwappedPartsAreOneClosedCycle() {
    Map<Place, Part> fitted = new LinkedHashMap<>();
    fitted.put(PLACES.get(4), part(5));
    fitted.put(PLACES.get(5), part(4));
    List<Cycle> cycles = Cycle.of(fitted);
    assertThat(cycles).hasSize(1);
    assertThat(cycles.get(0).closed()).isTrue();
    assertThat(cycles.get(0).words())
        .isEqualTo(
            "Take pushrod number 0006 out of 3 IN: it belongs at 3 EX. "
                + "Take pushrod number 0005 out of 3 EX: it belongs at 3 IN.");
  }

  @Test
  void aChainThatEndsAtAFreePlaceStartsThere() {
    Map<Place, Part> fitted = new LinkedHashMap<>();
    fitted.put(PLACES.get(1), part(0));
    fitted.put(PLACES.get(2), part(1));
    List<Cycle> cycles = Cycle.of(fitted);
    assertThat(cycles).hasSize(1);
    assertThat(cycles.get(0).closed()).isFalse();
    assertThat(cycles.get(0).moves()).extracting(m -> m.part().item()).containsExactly(1, 2);
  }

  /** Carrying the moves out as told brings every part home, for any arrangement. */
  @Test
  void theWayOutBringsEveryPartHome() {
    Random random = new Random(5);
    for (int round = 0; round < 500; round++) {
      Map<Place, Part> fitted = arrangement(random);
      Map<Place, Part> after = new HashMap<>(fitted);
      int wrong = 0;
      for (Map.Entry<Place, Part> entry : fitted.entrySet()) {
        wrong += entry.getValue().home().equals(entry.getKey()) ? 0 : 1;
      }
      int moves = 0;
      for (Cycle cycle : Cycle.of(fitted)) {
        moves += cycle.moves().size();
        for (Cycle.Move move : cycle.moves()) {
          if (!cycle.closed()) {
            assertThat(after).doesNotContainKey(move.to());
          }
          after.remove(move.from(), move.part());
          if (!cycle.closed()) {
            after.put(move.to(), move.part());
          }
        }
        if (cycle.closed()) {
          cycle.moves().forEach(move -> after.put(move.to(), move.part()));
        }
      }
      assertThat(moves).as("no part is moved twice").isEqualTo(wrong);
      assertThat(after).hasSameSizeAs(fitted);
      after.forEach((place, part) -> assertThat(part.home()).isEqualTo(place));
    }
  }

  private static Map<Place, Part> arrangement(Random random) {
    List<Integer> items = new ArrayList<>();
    for (int at = 0; at < PLACES.size(); at++) {
      items.add(at);
    }
    Collections.shuffle(items, random);
    Map<Place, Part> fitted = new LinkedHashMap<>();
    int filled = random.nextInt(PLACES.size() + 1);
    for (int at = 0; at < filled; at++) {
      fitted.put(PLACES.get(at), part(items.get(at)));
    }
    return fitted;
  }
}
