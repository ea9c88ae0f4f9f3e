package wherefrom.ui.drawn;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import wherefrom.drawing.PartState;
import wherefrom.job.EngineJob;
import wherefrom.job.PlaceState;
import wherefrom.parts.Place;

/** What a job says of a place, as the drawing shows it. */
public final class PartStates {
  private PartStates() {}

  /** What a job says of its places now: to be asked anew after each entry. */
  public static Function<Place, PartState> of(EngineJob job) {
    Map<Place, PartState> known = new HashMap<>();
    return place -> known.computeIfAbsent(place, at -> of(job.state(at)));
  }

  /** The state to draw; what waits for a decision or a check lies on the bench. */
  public static PartState of(PlaceState state) {
    return switch (state) {
      case IN -> PartState.IN;
      case OUT -> PartState.OUT;
      case WASHING -> PartState.WASHING;
      case AT_SHOP -> PartState.AT_SHOP;
      case MISSING -> PartState.MISSING;
      case FITTED -> PartState.FITTED;
      case OTHER_FITTED -> PartState.OTHER_FITTED;
      case FITTED_BUT -> PartState.FITTED_BUT;
      case IN_BUT -> PartState.IN_BUT;
      case OPEN -> PartState.OUT.open();
      case EXCUSED -> PartState.LEFT_EMPTY;
    };
  }
}
