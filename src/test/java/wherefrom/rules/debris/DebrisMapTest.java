package wherefrom.rules.debris;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class DebrisMapTest {
  private static DebrisMap of(DebrisPlace place, DebrisLook look) {
    return DebrisMap.of(List.of(new DebrisFind(place, look)), Set.of(), ReachedMains.OPEN);
  }

  @Test
  void plasticInThePanPointsToTheCamGearAndOpensTheCheapestFirst() {
    DebrisMap map = of(DebrisPlace.PAN, DebrisLook.PLASTIC);
    assertThat(map.suspects().get(0)).contains("teeth of the cam gear");
    assertThat(map.openings())
        .containsExactly(
            Opening.FILTER,
            Opening.FRONT_COVER,
            Opening.PAN_AND_PICKUP,
            Opening.PUMP,
            Opening.FIRST_BEARINGS);
    assertThat(map.mains()).isEqualTo(ReachedMains.OPEN);
  }

  @Test
  void copperInTheFilterPointsToTheBearingsAndEndsAtAllOfThem() {
    DebrisMap map = of(DebrisPlace.FILTER_PLEATS, DebrisLook.COPPER);
    assertThat(map.openings()).containsExactly(Opening.FIRST_BEARINGS, Opening.ALL_BEARINGS);
  }

  @Test
  void theSameFlakesPastTheFilterAreWorse() {
    assertThat(of(DebrisPlace.MAGNETIC_PLUG, DebrisLook.MAGNETIC_FLAKES).openings())
        .doesNotContain(Opening.GALLERIES);
    assertThat(of(DebrisPlace.GALLERY, DebrisLook.MAGNETIC_FLAKES).openings())
        .contains(Opening.GALLERIES, Opening.ALL_BEARINGS);
  }

  @Test
  void onlyAStarvingPickupIsSuspectedOfSealant() {
    DebrisMap map = of(DebrisPlace.PICKUP_SCREEN, DebrisLook.SEALANT);
    assertThat(map.openings()).containsExactly(Opening.PAN_AND_PICKUP);
    assertThat(map.mains()).isEqualTo(ReachedMains.NOTHING_FOUND);
  }

  @Test
  void harmfulDebrisAtTheMainsAnswersTheQuestion() {
    assertThat(of(DebrisPlace.MAINS, DebrisLook.SILVER_GLITTER).mains())
        .isEqualTo(ReachedMains.YES);
  }

  @Test
  void theQuestionStaysOpenUntilTheBearingsWereLookedAt() {
    List<DebrisFind> finds = List.of(new DebrisFind(DebrisPlace.PAN, DebrisLook.PLASTIC));
    Set<Opening> most = EnumSet.complementOf(EnumSet.of(Opening.FIRST_BEARINGS));
    assertThat(DebrisMap.of(finds, most, ReachedMains.OPEN).mains()).isEqualTo(ReachedMains.OPEN);
    assertThat(DebrisMap.of(finds, most, ReachedMains.OPEN).openings())
        .containsExactly(Opening.FIRST_BEARINGS);
    assertThat(DebrisMap.of(finds, most, ReachedMains.NO).mains()).isEqualTo(ReachedMains.NO);
  }

  @Test
  void everyLookHasASuspectAndSomethingToOpen() {
    for (DebrisLook look : DebrisLook.values()) {
      assertThat(look.openings()).as(look.words()).isNotEmpty();
      assertThat(look.suspect()).isNotBlank();
    }
  }
}
