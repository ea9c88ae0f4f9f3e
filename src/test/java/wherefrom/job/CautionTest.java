package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wherefrom.parts.BigPartKind;

class CautionTest {
  @Test
  void springsAreTakenOffWithEyeProtection() {
    // TM 5-1940-322-24 WP 0160-4: wear eye protection, keepers fly.
    assertThat(Caution.atStage(3)).contains(Caution.SPRINGS);
  }

  @Test
  void compressedAirStaysUnderThirtyPsi() {
    // 29 CFR 1910.242(b).
    assertThat(Caution.atWashing()).contains(Caution.COMPRESSED_AIR);
    assertThat(Caution.COMPRESSED_AIR.sentence()).contains("under 30 psi");
  }

  @Test
  void theFirstStartWantsAFireExtinguisherAndALookForFuelLeaks() {
    // Common practice, no source.
    assertThat(Caution.atFirstStart()).contains(Caution.FIRST_START);
    assertThat(Caution.FIRST_START.sentence()).contains("fire extinguisher", "fuel leaks");
  }

  @Test
  void theDamperIsPulledAtItsHubBeforeCrankAndCamComeOut() {
    // Common practice, no source.
    assertThat(Caution.atStage(4, BigPartKind.DAMPER))
        .contains(Caution.DAMPER)
        .doesNotHaveDuplicates();
    assertThat(Caution.of(BigPartKind.CRANKSHAFT)).containsExactly(Caution.HOIST);
    assertThat(Caution.of(BigPartKind.HEAD)).containsExactly(Caution.OLD_GASKETS, Caution.HEAVY);
    assertThat(Caution.of(BigPartKind.FLYWHEEL))
        .containsExactly(Caution.CLUTCH_DUST, Caution.HEAVY);
    assertThat(Caution.atStage(5)).contains(Caution.DAMPER);
    assertThat(Caution.atStage(6)).contains(Caution.DAMPER, Caution.HOT_PARTS);
  }

  @Test
  void everyCautionHasASourceAndAStep() {
    for (Caution caution : Caution.values()) {
      assertThat(caution.source()).isNotBlank();
      boolean shown =
          Caution.atOil().contains(caution)
              || Caution.atFirstStart().contains(caution)
              || Caution.atCastings().contains(caution)
              || Caution.beforeTeardown().contains(caution)
              || Caution.atRunIn().contains(caution)
              || caution == Caution.TORQUE;
      for (int stage = 0; stage <= 6; stage++) {
        shown |= Caution.atStage(stage).contains(caution);
      }
      for (BigPartKind part : BigPartKind.values()) {
        shown |= Caution.of(part).contains(caution);
      }
      assertThat(shown).as(caution.name()).isTrue();
    }
  }
}
