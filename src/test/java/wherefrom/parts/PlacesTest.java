package wherefrom.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.CamBearingSpot;
import wherefrom.engine.Layout;
import wherefrom.engine.MainSpot;
import wherefrom.engine.ReadyLayouts;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;

/**
 * Counts per layout for two valves a cylinder and individual pivots. They follow from the layout;
 * the numbers of main and cam bearings are from memory and vary between engines.
 */
class PlacesTest {
  private static Layout layout(String name) {
    return ReadyLayouts.find(name).orElseThrow();
  }

  private static long count(Layout layout, PartKind kind) {
    return Places.of(layout, Set.of(kind)).size();
  }

  @ParameterizedTest
  @CsvSource({
    // layout, valves, cylinders, rod journals, mains, main caps, tags of the kinds always on
    "inline-4, 8, 4, 4, 5, 5, 42",
    "inline-6, 12, 6, 6, 7, 7, 62",
    "v6-odd-even, 12, 6, 3, 4, 4, 56",
    "v8-odd-even, 16, 8, 4, 5, 5, 74",
    "v8-sequence, 16, 8, 4, 5, 5, 74",
    "opposed-4, 8, 4, 4, 3, 0, 38",
  })
  void countsFollowFromTheLayout(
      String name, int valves, int cylinders, int rodJournals, int mains, int caps, int tags) {
    Layout layout = layout(name);
    for (PartKind kind :
        List.of(
            PartKind.PUSHROD,
            PartKind.ROCKER,
            PartKind.PIVOT,
            PartKind.LIFTER,
            PartKind.VALVE,
            PartKind.SPRING,
            PartKind.RETAINER,
            PartKind.KEEPERS)) {
      assertThat(count(layout, kind)).as(kind.word()).isEqualTo(valves);
    }
    for (PartKind kind : List.of(PartKind.PISTON, PartKind.ROD, PartKind.ROD_CAP)) {
      assertThat(count(layout, kind)).as(kind.word()).isEqualTo(cylinders);
    }
    assertThat(count(layout, PartKind.ROD_SHELL)).isEqualTo(2L * cylinders);
    assertThat(layout.rodJournals()).isEqualTo(rodJournals);
    assertThat(layout.mains()).isEqualTo(mains);
    assertThat(count(layout, PartKind.MAIN_SHELL)).isEqualTo(2L * mains);
    assertThat(count(layout, PartKind.MAIN_CAP)).isEqualTo(caps);
    assertThat(Places.of(layout, PartKind.alwaysOn())).hasSize(tags);
  }

  @Test
  void theOpposedFourLiesWithinThePrintedRangeOfTags() {
    assertThat(Places.of(layout("opposed-4"), PartKind.alwaysOn())).hasSizeBetween(38, 42);
  }

  @Test
  void everythingOnAV8Is188() {
    List<Place> places = Places.of(layout("v8-odd-even"), PartKind.all());
    assertThat(places).hasSize(188).doesNotHaveDuplicates();
    Map<PartKind, Long> counts =
        places.stream().collect(Collectors.groupingBy(Place::kind, Collectors.counting()));
    assertThat(counts).containsEntry(PartKind.CAM_BEARING, 5L).hasSize(PartKind.values().length);
  }

  @Test
  void aV8Needs42PlaceCards() {
    Layout v8 = layout("v8-odd-even");
    assertThat(Places.spots(Places.of(v8, PartKind.alwaysOn()))).hasSize(42);
  }

  @Test
  void everyPlaceIsFoundByItsKeyAndSpeaksForItself() {
    for (Layout layout : ReadyLayouts.all()) {
      List<Place> places = Places.of(layout, PartKind.all());
      assertThat(places).allSatisfy(p -> assertThat(Place.find(p.key())).contains(p));
      assertThat(places).extracting(Place::words).doesNotHaveDuplicates();
      assertThat(places).extracting(Place::key).doesNotHaveDuplicates();
    }
    assertThat(Place.find("pushrod@M1U")).isEmpty();
    assertThat(Place.find("nothing")).isEmpty();
  }

  /** As a person works: down at one valve, then the next; the cap off before the rod goes. */
  @Test
  void atOneSpotPartsComeOffFromTheOutsideIn() {
    List<String> keys =
        Places.of(layout("v8-odd-even"), PartKind.all()).stream().map(Place::key).toList();
    assertThat(keys)
        .startsWith(
            "rocker@1IN", "pivot@1IN", "pushrod@1IN", "rocker@1EX", "pivot@1EX", "pushrod@1EX")
        .containsSubsequence("lifter@1IN", "lifter@1EX", "lifter@2IN")
        .containsSubsequence("keepers@1IN", "retainer@1IN", "spring@1IN", "valve@1IN")
        .containsSubsequence("rod-shell@R1U", "rod@R1U", "rod-cap@R1L", "rod-shell@R1L")
        .containsSubsequence("main-shell@M1U", "main-cap@M1L", "main-shell@M1L", "main-shell@M2U")
        .endsWith("cam-bearing@C4", "cam-bearing@C5");
  }

  /** Lists go by it: what is outside comes before what it covers. */
  @Test
  void kindsSidesAndHalvesStandInTheOrderInWhichTheyComeOut() {
    assertThat(PartKind.values())
        .extracting(PartKind::word)
        .containsExactly(
            "rocker",
            "pivot",
            "pushrod",
            "lifter",
            "keeper pair",
            "retainer",
            "valve spring",
            "valve",
            "rod cap",
            "rod shell",
            "rod",
            "piston",
            "main cap",
            "main shell",
            "cam bearing");
    assertThat(Spots.all(layout("v8-odd-even")).stream().<Class<?>>map(Spot::getClass).distinct())
        .containsExactly(
            ValveSpot.class, BoreSpot.class, RodSpot.class, MainSpot.class, CamBearingSpot.class);
    assertThat(ValveSide.values()).containsExactly(ValveSide.INTAKE, ValveSide.EXHAUST);
    assertThat(ShellHalf.values()).containsExactly(ShellHalf.UPPER, ShellHalf.LOWER);
  }

  @Test
  void rockersComeOutBeforeLiftersAndLiftersBeforeTheBottomEnd() {
    List<Place> places = Places.of(layout("v8-odd-even"), PartKind.alwaysOn());
    assertThat(places.get(0).words()).isEqualTo("cylinder 1, intake, rocker");
    assertThat(places.get(1).words()).isEqualTo("cylinder 1, intake, pushrod");
    assertThat(places).extracting(p -> p.kind().stage()).isSorted();
    assertThat(places.get(73).words()).isEqualTo("main 5, lower shell");
  }
}
