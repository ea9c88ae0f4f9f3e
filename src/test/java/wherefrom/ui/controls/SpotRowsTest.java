package wherefrom.ui.controls;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;

/** Where the spots stand in the drawing, front of the engine on the left. */
class SpotRowsTest {
  private static final Layout V8 = ReadyLayouts.find("v8-odd-even").orElseThrow();

  private static List<String> figures(SpotRows.Row row) {
    return row.spots().stream().map(Spot::figures).toList();
  }

  /** Who stands at the right of the drawing and looks left has the left hand at the lower edge. */
  @Test
  void fromAboveTheLeftBankIsTheLowerRow() {
    List<SpotRows.Row> rows = SpotRows.of(V8, EngineSide.TOP);
    assertThat(rows).extracting(SpotRows.Row::words).containsExactly("Right bank", "Left bank");
    assertThat(figures(rows.get(1)))
        .containsExactly("1 EX", "1 IN", "3 IN", "3 EX", "5 EX", "5 IN", "7 IN", "7 EX");
  }

  @Test
  void fromBelowTheSidesAreMirrored() {
    List<SpotRows.Row> rows = SpotRows.of(V8, EngineSide.BOTTOM);
    assertThat(rows)
        .extracting(SpotRows.Row::words)
        .containsExactly("Left bank", "Mains", "Right bank");
    assertThat(figures(rows.get(0)).subList(0, 4))
        .containsExactly("R1 UP", "R1 LO", "R3 UP", "R3 LO");
  }

  @Test
  void everySpotOfEveryReadyLayoutIsDrawnOnce() {
    for (Layout layout : ReadyLayouts.all()) {
      List<Spot> drawn =
          List.of(EngineSide.values()).stream()
              .flatMap(side -> SpotRows.of(layout, side).stream())
              .flatMap(row -> row.spots().stream())
              .toList();
      Set<Spot> once = new HashSet<>(drawn);
      assertThat(once).hasSameSizeAs(drawn).containsAll(Spots.all(layout));
      drawn.forEach(spot -> assertThat(EngineSide.values()).contains(EngineSide.of(spot)));
    }
  }

  @Test
  void aV8ShowsSixteenValvesAndTwentySixSpotsOfTheBottomEnd() {
    assertThat(SpotRows.of(V8, EngineSide.TOP).stream().mapToInt(row -> row.spots().size()).sum())
        .isEqualTo(16);
    assertThat(
            SpotRows.of(V8, EngineSide.BOTTOM).stream().mapToInt(row -> row.spots().size()).sum())
        .isEqualTo(26);
  }
}
