package wherefrom.referee;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Every history of a two-cylinder engine, up to a length: what is done is done to a few parts that
 * have to do with each other, and after each act every part of the engine is judged.
 */
class TwoCylinderTest {
  private static final Engines FLAT = Engines.twoCylinders(false);
  private static final Engines ROLLER = Engines.twoCylinders(true);

  private long histories;

  /**
   * @param deeper how much longer the histories are than in the build
   */
  private void walkAll(int deeper) {
    for (Bout start : List.of(FLAT.apart(), FLAT.together())) {
      walk(start, rods(FLAT.motor()), 2 + deeper);
      walk(start, mains(FLAT.motor()), 2 + deeper);
      walk(start, valvetrain(FLAT.motor()), 2 + deeper);
      walk(start, everything(FLAT.motor()), 1 + deeper);
    }
    walk(FLAT.bout(), everything(FLAT.motor()), 1 + deeper);
    walk(ROLLER.apart(), valvetrain(ROLLER.motor()), 1 + deeper);
  }

  private void walk(Bout start, Deeds deeds, int length) {
    Walk.Found found = Walk.everyHistory(start, deeds, length);
    histories += found.histories();
    System.out.println(
        found.histories()
            + " histories of up to "
            + length
            + " acts, "
            + found.milliseconds()
            + " ms");
    assertThat(found.differences()).isEmpty();
  }

  @Test
  void everyShortHistory() {
    walkAll(Integer.getInteger("referee.deeper", 0));
    assertThat(histories).isGreaterThan(4_000);
  }

  @Test
  @Tag("soak")
  void everyHistoryThatFiveMinutesAllow() {
    walkAll(Integer.getInteger("referee.deeper", 1));
    System.out.println(histories + " histories in all");
    assertThat(histories).isGreaterThan(100_000);
  }

  private static Deeds rods(Motor motor) {
    return new Deeds(
        motor,
        slots(motor, "rod@R1U rod-cap@R1L rod-shell@R1L rod@R2U rod-cap@R2L rod-shell@R2L"),
        slots(motor, "rod@R1U rod-cap@R1L rod-shell@R1L"),
        List.of("ROD_RESIZED B1", "ROD_JOURNALS_GROUND"),
        Map.of(Kind.ROD_CAP, "rod-cap-mark", Kind.ROD_SHELL, "rod-shell-back"));
  }

  private static Deeds mains(Motor motor) {
    return new Deeds(
        motor,
        slots(motor, "main-cap@M1L main-shell@M1L main-shell@M1U main-cap@M2L main-shell@M2L"),
        slots(motor, "main-cap@M1L main-shell@M1L"),
        List.of("LINE_HONED", "MAIN_JOURNALS_GROUND"),
        Map.of(Kind.MAIN_CAP, "main-cap-mark", Kind.MAIN_SHELL, "main-shell-face"));
  }

  private static Deeds valvetrain(Motor motor) {
    return new Deeds(
        motor,
        slots(motor, "lifter@1EX pushrod@1EX rocker@1EX pivot@1EX lifter@1IN rocker@1IN pivot@1IN"),
        slots(motor, "lifter@1EX rocker@1EX pivot@1EX"),
        motor.roller ? List.of("VALVE_JOB single") : List.of("NEW_FLAT_CAM"),
        Map.of(Kind.LIFTER, "lifter-foot", Kind.ROCKER, "rocker-faces"));
  }

  /** A part of each kind, with every change that asks for something. */
  private static Deeds everything(Motor motor) {
    Set<Integer> slots =
        slots(
            motor,
            "lifter@1EX pushrod@1EX rocker@1EX pivot@1EX keepers@1EX retainer@1EX spring@1EX"
                + " valve@1EX rod@R1U rod-cap@R1L rod-shell@R1L piston@B1 main-cap@M1L"
                + " main-shell@M1L cam-bearing@C1 spring@1IN valve@2EX");
    return new Deeds(motor, slots, slots, Chance.everyChange("single", "B1"), Chance.oneLookEach());
  }

  private static Set<Integer> slots(Motor motor, String keys) {
    Set<Integer> slots = new LinkedHashSet<>();
    for (String key : keys.split(" ")) {
      slots.add(motor.at(key));
    }
    return slots;
  }
}
