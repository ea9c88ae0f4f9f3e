package wherefrom.job.decide;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import wherefrom.inspection.Decision;
import wherefrom.parts.PartKind;

/** Which kinds of part the trade works over, and which it only ever replaces. */
public final class Machining {
  /** What a shop refaces, resizes or cuts (common practice, no source). */
  private static final Set<PartKind> WORKED =
      EnumSet.of(
          PartKind.ROCKER,
          PartKind.LIFTER,
          PartKind.VALVE,
          PartKind.ROD,
          PartKind.ROD_CAP,
          PartKind.PISTON,
          PartKind.MAIN_CAP);

  private Machining() {}

  /** Whether used parts of a kind are ever machined. */
  public static boolean isDone(PartKind kind) {
    return WORKED.contains(kind);
  }

  /** Why a decision makes no sense for a kind, and what does; empty where it does. */
  public static Optional<String> objection(Decision decision, PartKind kind) {
    return decision == Decision.MACHINE && !isDone(kind)
        ? Optional.of("A " + kind.word() + " is never machined. Reuse it, or replace it.")
        : Optional.empty();
  }
}
