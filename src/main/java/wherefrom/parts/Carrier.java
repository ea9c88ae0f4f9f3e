package wherefrom.parts;

import java.util.Optional;
import wherefrom.engine.RockerMount;

/**
 * Which big part must be there for a part to sit in its place (common practice, no source). Rockers
 * stand on studs of the head or on their shaft, a pushrod goes up through the head; what belongs to
 * a valve can be fitted to a head on the bench.
 *
 * @param kind the big part
 * @param mustBeOn whether it must be on the engine; else it is enough that it is at hand
 */
public record Carrier(BigPartKind kind, boolean mustBeOn) {

  /** What a kind of part needs; empty of what lies in the block. */
  public static Optional<Carrier> of(PartKind kind, RockerMount rockers) {
    return switch (kind) {
      case PUSHROD -> Optional.of(new Carrier(BigPartKind.HEAD, true));
      case ROCKER, PIVOT ->
          Optional.of(
              rockers == RockerMount.SHAFT
                  ? new Carrier(BigPartKind.ROCKER_SHAFT, false)
                  : new Carrier(BigPartKind.HEAD, true));
      case SPRING, RETAINER, KEEPERS, VALVE -> Optional.of(new Carrier(BigPartKind.HEAD, false));
      case LIFTER, ROD_SHELL, ROD_CAP, ROD, PISTON, MAIN_SHELL, MAIN_CAP, CAM_BEARING ->
          Optional.empty();
    };
  }
}
