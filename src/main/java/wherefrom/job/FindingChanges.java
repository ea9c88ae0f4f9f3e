package wherefrom.job;

import java.util.Map;
import java.util.Optional;
import wherefrom.rules.consequence.ChangeKind;

/** Which findings amount to a change that has rules of its own. */
final class FindingChanges {
  /** A failed answer to these checks is a finding that has rules of its own. */
  private static final Map<String, ChangeKind> FAILED =
      Map.ofEntries(
          Map.entry("rod-shell-face", ChangeKind.BEARING_FAILED),
          Map.entry("main-shell-face", ChangeKind.BEARING_FAILED),
          Map.entry("pushrod-roll", ChangeKind.PUSHROD_BENT),
          Map.entry("lobe-look", ChangeKind.LOBE_FAILED),
          Map.entry("lifter-foot", ChangeKind.FOOT_WORN),
          Map.entry("lifter-wheel", ChangeKind.ROLLER_WORN),
          Map.entry("stud-line", ChangeKind.STUD_MOVED),
          Map.entry("gear-teeth", ChangeKind.PLASTIC_GEAR_BROKEN),
          Map.entry("rod-cap-mark", ChangeKind.CAP_LOST),
          Map.entry("rod-mark", ChangeKind.CAP_LOST),
          Map.entry("main-cap-mark", ChangeKind.CAP_LOST));

  /** A suspect answer to these, too. */
  private static final Map<String, ChangeKind> SUSPECT =
      Map.of("gear-teeth", ChangeKind.PLASTIC_GEAR_OLD);

  /** A rejected reading by these plans is one, too. */
  private static final Map<String, ChangeKind> REJECTED =
      Map.of(
          "lifter-crown", ChangeKind.FOOT_WORN,
          "pushrod-runout", ChangeKind.PUSHROD_BENT,
          "lobe-lift", ChangeKind.LOBE_FAILED);

  private FindingChanges() {}

  /** The change that a failed answer to a check is; empty for most. */
  static Optional<ChangeKind> ofFailed(String check) {
    return Optional.ofNullable(FAILED.get(check));
  }

  /** The change that a suspect answer is; empty for most. */
  static Optional<ChangeKind> ofSuspect(String check) {
    return Optional.ofNullable(SUSPECT.get(check));
  }

  /** The change that a rejected reading is. */
  static Optional<ChangeKind> ofRejected(String plan) {
    return Optional.ofNullable(REJECTED.get(plan));
  }
}
