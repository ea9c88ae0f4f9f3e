package wherefrom.ui.drawn;

import java.util.Optional;
import wherefrom.drawing.Target;
import wherefrom.parts.Place;

/**
 * A tap on a drawing.
 *
 * @param target the zone that was tapped: what the tap means
 * @param nearest the place in it whose part the finger came nearest to; empty where two are about
 *     as near, and where no finger pressed it
 */
public record Tap(Target target, Optional<Place> nearest) {
  /** Without a finger, as by Enter or from a list. */
  public static Tap of(Target target) {
    return new Tap(target, Optional.empty());
  }
}
