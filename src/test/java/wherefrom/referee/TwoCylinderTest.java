package wherefrom.referee;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Every short history of a two-cylinder engine with all kinds of part. */
class TwoCylinderTest {
  private static Set<Integer> slots(Motor motor, String keys) {
    Set<Integer> slots = new LinkedHashSet<>();
    for (String key : keys.split(" ")) {
      slots.add(motor.at(key));
    }
    return slots;
  }

  static Deeds rods(Motor motor) {
    return new Deeds(
        motor,
        slots(motor, "rod@R1U rod-cap@R1L rod-shell@R1L rod@R2U rod-cap@R2L rod-shell@R2L"),
        slots(motor, "rod@R1U rod-cap@R1L rod-shell@R1L"),
        List.of("ROD_RESIZED B1", "ROD_JOURNALS_GROUND"),
        Map.of(Kind.ROD_CAP, "rod-cap-mark", Kind.ROD_SHELL, "rod-shell-back"));
  }

  static Deeds mains(Motor motor) {
    return new Deeds(
        motor,
        slots(motor, "main-cap@M1L main-shell@M1L main-shell@M1U main-cap@M2L main-shell@M2L"),
        slots(motor, "main-cap@M1L main-shell@M1L"),
        List.of("LINE_HONED", "MAIN_JOURNALS_GROUND"),
        Map.of(Kind.MAIN_CAP, "main-cap-mark", Kind.MAIN_SHELL, "main-shell-face"));
  }

  static Deeds valvetrain(Motor motor) {
    return new Deeds(
        motor,
        slots(motor, "lifter@1EX pushrod@1EX rocker@1EX pivot@1EX lifter@1IN rocker@1IN pivot@1IN"),
        slots(motor, "lifter@1EX rocker@1EX pivot@1EX"),
        List.of("NEW_FLAT_CAM"),
        Map.of(Kind.LIFTER, "lifter-foot", Kind.ROCKER, "rocker-faces"));
  }

  private static long walk(Engines engine, Deeds deeds, boolean fitted, int depth) {
    Bout bout = engine.bout();
    for (Slot slot : engine.motor().slots) {
      assertThat(bout.perform(Act.of(Act.Verb.OUT, slot.at()))).isEmpty();
    }
    if (fitted) {
      for (Slot slot : engine.motor().slots) {
        assertThat(bout.perform(Act.at(Act.Verb.FIT, slot.at(), slot.at()))).isEmpty();
      }
    }
    assertThat(bout.compareAll(1)).isEqualTo(Optional.empty());
    Walk walk = new Walk(deeds);
    long start = System.nanoTime();
    walk.on(bout, depth, Set.of("all"), "", 40);
    System.out.println(walk.histories() + " histories, " + (System.nanoTime() - start) / 1_000_000 + " ms");
    walk.differences().forEach(System.out::println);
    return walk.histories();
  }

  @Test
  void rods() {
    Engines engine = Engines.twoCylinders(false);
    walk(engine, rods(engine.motor()), false, 2);
    walk(engine, mains(engine.motor()), false, 2);
    walk(engine, valvetrain(engine.motor()), false, 2);
    walk(engine, rods(engine.motor()), true, 2);
  }
}
