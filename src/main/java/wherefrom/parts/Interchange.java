package wherefrom.parts;

import java.util.EnumSet;
import java.util.Set;
import wherefrom.engine.Layout;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.Spot;
import wherefrom.engine.ValveSpot;

/**
 * Which places the same new part fits, as long as it never ran: new lifters from one box are all
 * alike, a new rod with its cap is not (common practice, no source).
 */
public final class Interchange {
  private static final Set<PartKind> ALIKE =
      EnumSet.of(
          PartKind.LIFTER,
          PartKind.PUSHROD,
          PartKind.ROCKER,
          PartKind.PIVOT,
          PartKind.KEEPERS,
          PartKind.RETAINER,
          PartKind.SPRING);

  private Interchange() {}

  /** Whether new parts bought for the two places are the same thing. */
  public static boolean areAlike(Layout layout, Place one, Place other) {
    PartKind kind = one.kind();
    if (kind != other.kind()) {
      return false;
    }
    return one.equals(other)
        || ALIKE.contains(kind)
        || areAlike(layout, one.spot(), other.spot(), kind);
  }

  /** Intake and exhaust valves differ; upper and lower shells; shells that carry the thrust. */
  private static boolean areAlike(Layout layout, Spot one, Spot other, PartKind kind) {
    return switch (kind) {
      case VALVE -> ((ValveSpot) one).side() == ((ValveSpot) other).side();
      case ROD_SHELL -> ((RodSpot) one).half() == ((RodSpot) other).half();
      case MAIN_SHELL -> {
        MainSpot main = (MainSpot) one;
        MainSpot second = (MainSpot) other;
        boolean thrust = main.number() == layout.thrustMain();
        yield main.half() == second.half() && thrust == (second.number() == layout.thrustMain());
      }
      default -> false;
    };
  }
}
