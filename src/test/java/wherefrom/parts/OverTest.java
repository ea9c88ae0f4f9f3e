package wherefrom.parts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class OverTest {
  private static Place at(String key) {
    return Place.find(key).orElseThrow();
  }

  @Test
  void aCapClosesOverShellsRodAndPistonOfItsOwnBearing() {
    assertThat(Over.findCap(at("rod-shell@R4U"))).contains(at("rod-cap@R4L"));
    assertThat(Over.findCap(at("piston@B4"))).contains(at("rod-cap@R4L"));
    assertThat(Over.findCap(at("rod@R4U"))).contains(at("rod-cap@R4L"));
    assertThat(Over.findCap(at("main-shell@M2U"))).contains(at("main-cap@M2L"));
    assertThat(Over.findCap(at("pushrod@3EX"))).isEmpty();
    assertThat(Over.isOver(at("rod-cap@R5L"), at("rod-shell@R4L"))).isFalse();
  }

  @Test
  void aShellLiesInItsCapOrItsRodAndAnUpperMainShellInTheBlock() {
    assertThat(Over.findHolder(at("rod-shell@R4U"))).contains(at("rod@R4U"));
    assertThat(Over.findHolder(at("rod-shell@R4L"))).contains(at("rod-cap@R4L"));
    assertThat(Over.findHolder(at("main-shell@M2L"))).contains(at("main-cap@M2L"));
    assertThat(Over.findHolder(at("main-shell@M2U"))).isEmpty();
    assertThat(Over.findHolder(at("rocker@3EX"))).isEmpty();
  }
}
