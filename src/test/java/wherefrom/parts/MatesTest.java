package wherefrom.parts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MatesTest {
  private static boolean areMates(String one, String other) {
    return Mates.areMates(Place.find(one).orElseThrow(), Place.find(other).orElseThrow());
  }

  @Test
  void aPushrodRunsBetweenItsRockerAndItsLifterAndTheLifterOnItsLobe() {
    assertThat(areMates("pushrod@3EX", "rocker@3EX")).isTrue();
    assertThat(areMates("pushrod@3EX", "lifter@3EX")).isTrue();
    assertThat(areMates("pushrod@3EX", "valve@3EX")).isFalse();
    assertThat(Mates.of(PartKind.LIFTER).words()).isEqualTo("pushrod, cam lobe, lifter bore");
  }

  @Test
  void theNextValveAlongIsNoMate() {
    assertThat(areMates("pushrod@3EX", "rocker@3IN")).isFalse();
    assertThat(areMates("rod-shell@R3U", "rod-shell@R4U")).isFalse();
    assertThat(areMates("main-shell@M2U", "main-shell@M3U")).isFalse();
  }

  @Test
  void bothHalvesOfABearingAreMatesWithTheirCap() {
    assertThat(areMates("main-shell@M2U", "main-shell@M2L")).isTrue();
    assertThat(areMates("main-shell@M2U", "main-cap@M2L")).isTrue();
    assertThat(areMates("rod-shell@R3U", "rod-cap@R3L")).isTrue();
    assertThat(areMates("rod@R3U", "rod-cap@R3L")).isTrue();
  }

  @Test
  void rodAndPistonAreMatesThoughTheySitAtTwoSpots() {
    assertThat(areMates("piston@B3", "rod@R3U")).isTrue();
    assertThat(areMates("piston@B3", "rod@R4U")).isFalse();
    assertThat(areMates("piston@B3", "valve@3EX")).isFalse();
  }

  @Test
  void whatIsMatedIsMatedBothWays() {
    for (PartKind one : PartKind.all()) {
      for (PartKind other : PartKind.all()) {
        assertThat(Mates.of(one).kinds().contains(other))
            .as(one + " and " + other)
            .isEqualTo(Mates.of(other).kinds().contains(one));
      }
    }
  }

  @Test
  void aPlaceIsNoMateOfItself() {
    assertThat(areMates("rod-shell@R3U", "rod-shell@R3U")).isFalse();
  }
}
