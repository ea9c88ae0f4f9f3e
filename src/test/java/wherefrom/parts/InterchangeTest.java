package wherefrom.parts;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.engine.Layout;
import wherefrom.engine.ReadyLayouts;

/** New parts from one box: which of them may go into each other's places (common practice). */
class InterchangeTest {
  /** Five mains; the thrust is taken by the fifth. */
  private static final Layout V8 = ReadyLayouts.find("v8-odd-even").orElseThrow();

  private static boolean alike(String one, String other) {
    return Interchange.areAlike(V8, Place.find(one).orElseThrow(), Place.find(other).orElseThrow());
  }

  @Test
  void theFifthMainOfThisEngineTakesTheThrust() {
    assertThat(V8.thrustMain()).isEqualTo(5);
  }

  @ParameterizedTest
  @CsvSource({
    "lifter@1IN, lifter@8EX",
    "pushrod@1IN, pushrod@2EX",
    "rocker@3IN, rocker@3EX",
    "pivot@3IN, pivot@4EX",
    "keepers@1IN, keepers@1EX",
    "retainer@1IN, retainer@2EX",
    "spring@1IN, spring@8EX",
    "valve@1IN, valve@2IN",
    "valve@1EX, valve@8EX",
    "rod-shell@R1U, rod-shell@R8U",
    "rod-shell@R1L, rod-shell@R2L",
    "main-shell@M1U, main-shell@M4U",
    "main-shell@M2L, main-shell@M3L",
    "rod@R1U, rod@R1U",
    "piston@B1, piston@B1",
    "cam-bearing@C2, cam-bearing@C2",
  })
  void theSameThingFromTheBox(String one, String other) {
    assertThat(alike(one, other)).isTrue();
    assertThat(alike(other, one)).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    // Another kind, an intake valve for an exhaust valve, an upper shell for a lower one.
    "lifter@1IN, pushrod@1IN",
    "valve@1IN, valve@1EX",
    "rod-shell@R1U, rod-shell@R1L",
    "main-shell@M1U, main-shell@M1L",
    // The thrust shell has flanges.
    "main-shell@M5U, main-shell@M4U",
    "main-shell@M4L, main-shell@M5L",
    // Machined with its mate, or each of its own width and bore.
    "rod@R1U, rod@R2U",
    "rod-cap@R1L, rod-cap@R2L",
    "main-cap@M1L, main-cap@M2L",
    "piston@B1, piston@B2",
    "cam-bearing@C1, cam-bearing@C2",
  })
  void eachForItsOwnPlace(String one, String other) {
    assertThat(alike(one, other)).isFalse();
    assertThat(alike(other, one)).isFalse();
  }
}
