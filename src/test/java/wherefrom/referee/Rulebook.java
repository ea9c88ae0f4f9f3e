package wherefrom.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The consequence rules, as far as they keep a part out: written down anew from the trade's table
 * of rules, not from the program. What is only to be known, bought, or checked before closing keeps
 * no part out and does not stand here.
 */
final class Rulebook {
  /**
   * What a row does: used parts must be new because of wear, size or sort, {@code flat} and {@code
   * roller} being sorts that a new part may be of; unless the check of that name is passed, {@code
   * forbid} because of the size, {@code refuse} because of wear; with {@code check} they wait for
   * it.
   *
   * @param engine only where the lifters are {@code flat}, or {@code roll}
   * @param cover {@code all} over the engine; the {@code bank}; its intake ({@code IN}) or its
   *     exhaust ({@code EX}) valves alone; the place {@code here}, whatever sits there; the {@code
   *     own} parts of that place, wherever they sit; the part it{@code self}
   */
  record Row(
      String rule,
      Set<String> changes,
      String engine,
      String does,
      String name,
      String cover,
      Set<String> kinds) {

    boolean isFor(boolean roller) {
      return engine.isEmpty() || engine.equals(roller ? "roll" : "flat");
    }

    boolean speaksOf(Kind kind) {
      return kinds.contains(kind.key)
          || kind.isShell() && kinds.contains("shells")
          || kind != Kind.LIFTER && kinds.contains("others");
    }

    /** {@code R11:pushrod-length@1EX} */
    String key(String where) {
      return rule + ":" + name + (where.isEmpty() ? "" : "@" + where);
    }
  }

  private static final String TABLE =
      """
      R1  | NEW_FLAT_CAM CAM_REGROUND  | flat | wear   | new              | all  | lifter
      R1  | NEW_FLAT_CAM CAM_REGROUND  | flat | check  | spring-load      | all  | spring
      R1  | NEW_FLAT_CAM CAM_REGROUND  | flat | check  | pushrod-ends     | all  | pushrod
      R2  | FOOT_WORN                  | flat | wear   | new              | self | lifter
      R3  | SLOT_UNKNOWN               | flat | refuse | machinist        | self | lifter
      R3  | SLOT_UNKNOWN               |      | check  | as-new-mate      | self | others
      R3  | SLOT_UNKNOWN               | roll | check  | as-new-roller    | self | lifter
      R4  | LIFTER_REPLACED            |      | check  | lobe-lift        | own  | lifter
      R4  | LIFTER_REPLACED            |      | check  | pushrod-ends     | own  | pushrod
      R5  | LOBE_FAILED                |      | wear   | new              | all  | lifter
      R5  | LOBE_FAILED                |      | check  | lifter-bores     | all  | lifter
      R7  | FLAT_TO_ROLLER             |      | roller | new              | all  | lifter
      R7  | FLAT_TO_ROLLER             |      | sort   | shorter          | all  | pushrod
      R7  | FLAT_TO_ROLLER             |      | check  | springs          | all  | spring
      R7  | NEW_ROLLER_CAM             | flat | roller | new              | all  | lifter
      R7  | NEW_ROLLER_CAM             | flat | sort   | shorter          | all  | pushrod
      R7  | NEW_ROLLER_CAM             | flat | check  | springs          | all  | spring
      R8  | PUSHROD_REPLACED           |      | check  | both-ends        | own  | pushrod
      R9  | LIFT_INCREASED ROCKER_RATIO|      | check  | coil-bind        | all  | spring
      R9  | LIFT_INCREASED ROCKER_RATIO|      | check  | retainer-seal    | all  | spring
      R9  | LIFT_INCREASED ROCKER_RATIO|      | check  | guide-top        | all  | spring
      R9  | LIFT_INCREASED ROCKER_RATIO|      | check  | rocker-slot      | all  | rocker
      R9  | LIFT_INCREASED ROCKER_RATIO|      | check  | studs            | all  | rocker
      R10 | ROCKER_REPLACED            |      | wear   | new              | own  | pivot
      R10 | ROCKER_REPLACED            |      | check  | ratio            | own  | rocker
      R10 | ROCKER_REPLACED            |      | check  | oil-hole         | own  | rocker
      R10 | ROCKER_REPLACED            |      | check  | pushrod-ends     | own  | pushrod
      R11 | NEW_FLAT_CAM CAM_REGROUND  |      | check  | pushrod-length   | here | pushrod
      R11 | FLAT_TO_ROLLER             |      | check  | pushrod-length   | here | pushrod
      R11 | GASKET_THICKNESS           |      | check  | pushrod-length   | here | pushrod
      R11 | NEW_ROLLER_CAM             | flat | check  | pushrod-length   | here | pushrod
      R11 | HEAD_MILLED DECK_MILLED    |      | check  | pushrod-length   | here | pushrod
      R11 | VALVE_JOB                  |      | check  | pushrod-length   | here | pushrod
      R11 | LIFTER_REPLACED            |      | check  | pushrod-length   | here | pushrod
      R11 | ROCKER_REPLACED            |      | check  | pushrod-length   | here | pushrod
      R11 | VALVE_REPLACED             |      | check  | pushrod-length   | here | pushrod
      R11 | NEW_ROLLER_CAM             | roll | check  | pushrod-length   | here | pushrod
      R11 | ROLLER_TO_FLAT             |      | check  | pushrod-length   | here | pushrod
      R11 | ROCKER_RATIO               |      | check  | pushrod-length   | here | pushrod
      R11 | LARGER_VALVES              |      | check  | pushrod-length   | here | pushrod
      R11 | LARGER_INTAKE_VALVES       |      | check  | pushrod-length   | here | pushrod
      R11 | LARGER_EXHAUST_VALVES      |      | check  | pushrod-length   | here | pushrod
      R11 | STUDS_SCREW_IN             |      | check  | pushrod-length   | here | pushrod
      R12 | VALVE_JOB                  |      | check  | installed-height | bank | spring
      R12 | VALVE_JOB                  |      | check  | tip-height       | bank | valve
      R12 | VALVE_JOB                  |      | check  | margin           | bank | valve
      R12 | VALVE_JOB                  |      | check  | seat-width       | bank | valve
      R13 | VALVE_REPLACED             |      | check  | guide            | own  | valve
      R13 | VALVE_REPLACED             |      | check  | seat             | own  | valve
      R16 | ROD_JOURNALS_GROUND        |      | size   | rod-new          | all  | rod-shell
      R16 | ROD_JOURNALS_GROUND        |      | check  | rod-fillets      | all  | rod-shell
      R16 | MAIN_JOURNALS_GROUND       |      | size   | main-new         | all  | main-shell
      R16 | MAIN_JOURNALS_GROUND       |      | check  | main-fillets     | all  | main-shell
      R17 | CRANK_POLISHED             |      | check  | shell-wall       | all  | shells
      R18 | BORED                      |      | size   | new              | all  | piston
      R18 | BORED                      |      | check  | piston-clearance | all  | piston
      R19 | HONED                      |      | check  | piston-clearance | here | piston
      R20 | ROD_RESIZED                |      | wear   | new              | own  | rod-shell
      R20 | ROD_RESIZED                |      | check  | round            | own  | rod-shell
      R21 | LINE_HONED                 |      | wear   | new              | all  | main-shell
      R21 | LINE_HONED                 |      | check  | caps             | all  | main-cap
      R22 | BEARING_FAILED             |      | wear   | new              | all  | shells
      R22 | BEARING_FAILED LOBE_FAILED |      | check  | journals         | all  | shells
      R22 | BEARING_FAILED LOBE_FAILED |      | check  | galleries        | all  | shells
      R23 | CAP_LOST CAP_REPLACED      |      | forbid | align-bore       | own  | rod-cap rod-shell
      R23 | CAP_LOST CAP_REPLACED      |      | forbid | align-bore       | own  | rod
      R23 | CAP_LOST CAP_REPLACED      |      | forbid | align-bore       | here | main-cap
      R23 | CAP_LOST CAP_REPLACED      |      | forbid | align-bore       | here | main-shell
      R23 | CAP_LOST CAP_REPLACED      |      | check  | align-bore-done  | own  | rod-shell
      R23 | CAP_LOST CAP_REPLACED      |      | check  | align-bore-done  | here | main-shell
      R25 | PUSHROD_BENT               |      | wear   | new              | self | pushrod
      R25 | PUSHROD_BENT               |      | check  | lifter           | here | lifter
      R25 | PUSHROD_BENT               |      | check  | rocker-and-stud  | here | rocker
      R25 | PUSHROD_BENT               |      | check  | stem-and-tip     | here | valve
      R29 | HOT_TANKED                 |      | wear   | new              | all  | cam-bearing
      R30 | SPRINGS_CHANGED            |      | sort   | new              | all  | spring
      R30 | SPRINGS_CHANGED            |      | check  | spring-seat      | all  | retainer keepers
      R30 | SPRINGS_CHANGED            |      | check  | spring-height    | all  | spring
      R30 | SPRINGS_CHANGED            |      | check  | coil-bind        | all  | spring
      R30 | SPRINGS_CHANGED            |      | check  | retainer-seal    | all  | spring
      R30 | SPRINGS_CHANGED            |      | check  | loads            | all  | spring
      R30 | SPRINGS_SHIMMED            |      | check  | spring-height    | all  | spring
      R30 | SPRINGS_SHIMMED            |      | check  | coil-bind        | all  | spring
      R30 | SPRINGS_SHIMMED            |      | check  | retainer-seal    | all  | spring
      R30 | SPRINGS_SHIMMED            |      | check  | loads            | all  | spring
      R31 | CRANK_CHANGED              |      | size   | new              | all  | shells
      R31 | CRANK_CHANGED              |      | check  | crank-journals   | all  | shells
      R32 | PISTONS_CHANGED            |      | sort   | new              | all  | piston
      R32 | PISTONS_CHANGED            |      | check  | piston-to-bore   | all  | piston
      R32 | PISTONS_CHANGED            |      | check  | pin-and-front    | all  | piston
      R33 | ROD_REPLACED               |      | wear   | new              | own  | rod-shell
      R33 | ROD_REPLACED               |      | check  | big-end          | own  | rod
      R34 | NEW_FLAT_CAM               | roll | flat   | new              | all  | lifter
      R34 | NEW_FLAT_CAM               | roll | sort   | longer           | all  | pushrod
      R34 | NEW_FLAT_CAM               | roll | check  | lifter-bores     | all  | lifter
      R34 | NEW_FLAT_CAM               | roll | check  | spring-load      | all  | spring
      R34 | ROLLER_TO_FLAT             |      | flat   | new              | all  | lifter
      R34 | ROLLER_TO_FLAT             |      | sort   | longer           | all  | pushrod
      R34 | ROLLER_TO_FLAT             |      | check  | lifter-bores     | all  | lifter
      R34 | ROLLER_TO_FLAT             |      | check  | spring-load      | all  | spring
      R35 | ROLLER_TO_FLAT             |      | check  | coil-bind        | all  | spring
      R35 | ROLLER_TO_FLAT             |      | check  | retainer-seal    | all  | spring
      R35 | NEW_FLAT_CAM CAM_REGROUND  |      | check  | coil-bind        | all  | spring
      R35 | NEW_FLAT_CAM CAM_REGROUND  |      | check  | retainer-seal    | all  | spring
      R35 | NEW_ROLLER_CAM             |      | check  | coil-bind        | all  | spring
      R35 | FLAT_TO_ROLLER             |      | check  | coil-bind        | all  | spring
      R35 | NEW_ROLLER_CAM             |      | check  | retainer-seal    | all  | spring
      R35 | FLAT_TO_ROLLER             |      | check  | retainer-seal    | all  | spring
      R36 | CAM_REGROUND               | roll | check  | roller-condition | all  | lifter
      R36 | NEW_ROLLER_CAM             | roll | check  | roller-condition | all  | lifter
      R36 | NEW_ROLLER_CAM             | roll | check  | springs          | all  | spring
      R37 | ROCKER_RATIO               |      | sort   | rockers          | all  | rocker
      R37 | ROCKER_RATIO               |      | wear   | pivots           | all  | pivot
      R37 | ROCKER_RATIO               |      | check  | true-ratio       | all  | rocker
      R37 | ROCKER_RATIO               |      | check  | pushrod-hole     | all  | pushrod
      R37 | ROCKER_RATIO               |      | check  | pushrod-ends     | all  | pushrod
      R38 | LARGER_VALVES              |      | size   | new              | bank | valve
      R38 | LARGER_VALVES              |      | check  | seats            | bank | valve
      R38 | LARGER_VALVES              |      | check  | guide            | bank | valve
      R38 | LARGER_VALVES              |      | check  | retainer-fit     | bank | retainer keepers
      R38 | LARGER_VALVES              |      | check  | springs          | bank | spring
      R38 | LARGER_INTAKE_VALVES       |      | size   | new              | IN   | valve
      R38 | LARGER_INTAKE_VALVES       |      | check  | seats            | IN   | valve
      R38 | LARGER_INTAKE_VALVES       |      | check  | guide            | IN   | valve
      R38 | LARGER_INTAKE_VALVES       |      | check  | retainer-fit     | IN   | retainer keepers
      R38 | LARGER_INTAKE_VALVES       |      | check  | springs          | IN   | spring
      R38 | LARGER_EXHAUST_VALVES      |      | size   | new              | EX   | valve
      R38 | LARGER_EXHAUST_VALVES      |      | check  | seats            | EX   | valve
      R38 | LARGER_EXHAUST_VALVES      |      | check  | guide            | EX   | valve
      R38 | LARGER_EXHAUST_VALVES      |      | check  | retainer-fit     | EX   | retainer keepers
      R38 | LARGER_EXHAUST_VALVES      |      | check  | springs          | EX   | spring
      R39 | STUDS_SCREW_IN             |      | check  | boss             | bank | rocker
      R39 | STUDS_SCREW_IN             |      | check  | stud-heights     | bank | rocker
      R39 | STUDS_SCREW_IN             |      | check  | guide-plates     | bank | pushrod
      """;

  static final List<Row> ROWS = TABLE.lines().map(Rulebook::row).toList();

  /** Looks whose failing is a finding with rules of its own. */
  static final Map<String, String> FINDINGS =
      Map.ofEntries(
          Map.entry("rod-shell-face", "BEARING_FAILED"),
          Map.entry("main-shell-face", "BEARING_FAILED"),
          Map.entry("pushrod-roll", "PUSHROD_BENT"),
          Map.entry("lifter-foot", "FOOT_WORN"),
          Map.entry("lobe-look", "LOBE_FAILED"),
          Map.entry("lobe-lift", "LOBE_FAILED"),
          Map.entry("pushrod-runout", "PUSHROD_BENT"),
          Map.entry("rod-cap-mark", "CAP_LOST"),
          Map.entry("rod-mark", "CAP_LOST"),
          Map.entry("main-cap-mark", "CAP_LOST"),
          Map.entry("lifter-crown", "FOOT_WORN"));

  /** What buying one of these means at its place. */
  static final Map<Kind, String> REPLACED =
      Map.of(
          Kind.LIFTER, "LIFTER_REPLACED",
          Kind.PUSHROD, "PUSHROD_REPLACED",
          Kind.ROCKER, "ROCKER_REPLACED",
          Kind.VALVE, "VALVE_REPLACED",
          Kind.ROD, "ROD_REPLACED");

  /** With another cam, no lifter is "a new one on the used cam". */
  static final Set<String> CAMS =
      Set.of("NEW_FLAT_CAM", "CAM_REGROUND", "NEW_ROLLER_CAM", "FLAT_TO_ROLLER", "ROLLER_TO_FLAT");

  private Rulebook() {}

  private static Row row(String line) {
    List<String> cells = new ArrayList<>();
    for (String cell : line.split("\\|", -1)) {
      cells.add(cell.strip());
    }
    return new Row(
        cells.get(0),
        words(cells.get(1)),
        cells.get(2),
        cells.get(3),
        cells.get(4),
        cells.get(5),
        words(cells.get(6)));
  }

  private static Set<String> words(String cell) {
    return Set.of(cell.split(" +"));
  }

  /** Whether a row of this cover, for a change at {@code where}, concerns a slot. */
  static boolean covers(String cover, String where, Slot slot) {
    if (cover.equals("IN") || cover.equals("EX")) {
      return slot.spot().endsWith(cover) && covers("bank", where, slot);
    }
    if (cover.equals("all") || where.isEmpty() || where.equals(slot.bank())) {
      return true;
    }
    if (cover.equals("bank")) {
      return false;
    }
    return where.equals(slot.spot())
        || where.equals(slot.journal())
        || where.equals(slot.key())
        || where.equals("B" + slot.cylinder());
  }
}
