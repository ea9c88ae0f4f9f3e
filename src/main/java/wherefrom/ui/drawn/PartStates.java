package wherefrom.ui.drawn;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.EngineStates;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Sign;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.job.EngineJob;
import wherefrom.job.PartRecord;
import wherefrom.job.PlaceState;
import wherefrom.parts.Place;

/** What a job says of a place, as the drawing shows it. */
public final class PartStates {
  private static final Set<Sign> PLAIN = EnumSet.of(Sign.IN, Sign.OUT, Sign.FITTED);

  private PartStates() {}

  /** What a job says of its places now: to be asked anew after each entry. */
  public static EngineStates of(EngineJob job) {
    Map<Place, PartState> known = new HashMap<>();
    return new EngineStates(
        job.layout(),
        place -> known.computeIfAbsent(place, at -> of(job, at)),
        job.bench()::findBigPart);
  }

  /**
   * A place's state, with the mark of a new part that was fitted, of one that failed, whatever was
   * decided, of one that is to be replaced, and of one that is suspect as long as nobody has
   * decided.
   */
  private static PartState of(EngineJob job, Place place) {
    PartState state = of(job.state(place));
    if (!PLAIN.contains(state.sign())) {
      return state;
    }
    Optional<PartRecord> part =
        job.findSeated(place)
            .or(() -> job.findOwner(place))
            .flatMap(found -> job.findPart(found.item()));
    if (state.equals(PartState.FITTED) && part.filter(it -> it.part().fresh()).isPresent()) {
      return PartState.NEW_FITTED;
    }
    return part.map(it -> found(job, state, it)).orElse(state);
  }

  /** A decision makes no failed part good; a doubt it does settle. */
  private static PartState found(EngineJob job, PartState state, PartRecord part) {
    Look worst = job.bench().worst(part.part().item()).look();
    if (worst == Look.FAIL) {
      return state.failed();
    }
    boolean bench = state.sign() == Sign.OUT;
    if (bench && part.decision().filter(Decision.REPLACE::equals).isPresent()) {
      return state.toReplace();
    }
    boolean suspect = worst == Look.SUSPECT && part.decision().isEmpty();
    return suspect ? state.suspect() : state;
  }

  /**
   * What an index says of its places, drawn as they are: a part that is out is a contour there too,
   * until all is done and well with it.
   *
   * @param said what the index says of a place; its parts as if they were in
   */
  public static EngineStates asTheyAre(EngineJob job, Function<Place, PartState> said) {
    EngineStates plain = of(job);
    return plain.with(
        place -> {
          PartState known = said.apply(place);
          PartState stands = plain.apply(place);
          boolean out = known.look() == DrawnAs.IN && stands.look() == DrawnAs.OUT;
          boolean unsaid = known.equals(PartState.IN);
          return !out ? known : unsaid ? stands : known.drawn(DrawnAs.OUT);
        });
  }

  /**
   * How a place of an index stands.
   *
   * @param words said aloud, such as {@code 2 to do}
   */
  public static PartState toDo(String words) {
    return new PartState(DrawnAs.IN, Sign.WAITING, words);
  }

  /** A place of an index with which all is done and well. */
  public static PartState done(String words) {
    return new PartState(DrawnAs.FITTED, Sign.FITTED, words);
  }

  /**
   * A place of an index by its worst answer so far.
   *
   * @param whole whether nothing is left to do
   */
  public static PartState standing(Look worst, boolean whole, String words) {
    return switch (worst) {
      case FAIL -> new PartState(DrawnAs.IN, Sign.FAILED, words);
      case SUSPECT -> new PartState(DrawnAs.IN, Sign.SUSPECT, words);
      case PASS, NOT_LOOKED -> whole ? done(words) : toDo(words);
    };
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
