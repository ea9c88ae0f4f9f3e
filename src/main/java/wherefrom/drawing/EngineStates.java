package wherefrom.drawing;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.BigPartAt;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.Carrier;
import wherefrom.parts.Place;

/**
 * What is so at the places of an engine, and of the heads and rocker shafts that carry some of
 * them. What goes with a head that is off is not in the engine either: a contour. Where a part was
 * fitted that can be fitted to a head on the bench, that is shown as long as the head is at hand.
 */
public final class EngineStates implements Function<Place, PartState> {
  private final Function<Place, PartState> parts;
  private final BiFunction<BigPartKind, Spot, Optional<BigPartAt>> bigParts;
  private final Layout layout;

  /**
   * @param parts what is so at each place
   * @param bigParts the big part that belongs to a spot, where the job keeps one
   */
  public EngineStates(
      Layout layout,
      Function<Place, PartState> parts,
      BiFunction<BigPartKind, Spot, Optional<BigPartAt>> bigParts) {
    this.layout = layout;
    this.parts = parts;
    this.bigParts = bigParts;
  }

  /** The same heads and shafts with other states of the places. */
  public EngineStates with(Function<Place, PartState> others) {
    return new EngineStates(layout, others, bigParts);
  }

  @Override
  public PartState apply(Place place) {
    PartState known = parts.apply(place);
    return findCarrier(place).map(carrier -> carried(known, place, carrier)).orElse(known);
  }

  private PartState carried(PartState known, Place place, BigPartAt carrier) {
    boolean there = known.look() == DrawnAs.FITTED && !isLacking(place, carrier);
    if (carrier.isOn() || there || known.look() == DrawnAs.OUT) {
      return known;
    }
    String with = known.words() + ", its " + carrier.part().name().kind().word() + " ";
    // What never came out of its head is where that is.
    boolean within = known.sign() == Sign.IN && !mustBeOn(place);
    Sign sign = within ? state(carrier).sign() : known.sign();
    return new PartState(DrawnAs.OUT, sign, with + state(carrier).words());
  }

  private boolean isLacking(Place place, BigPartAt carrier) {
    return mustBeOn(place) ? !carrier.isOn() : carrier.isAway();
  }

  /** Whether a part can be in only while what carries it is on; others go with it. */
  private boolean mustBeOn(Place place) {
    return Carrier.of(place.kind(), layout.rockers()).filter(Carrier::mustBeOn).isPresent();
  }

  private Optional<BigPartAt> findCarrier(Place place) {
    return Carrier.of(place.kind(), layout.rockers())
        .flatMap(carrier -> bigParts.apply(carrier.kind(), place.spot()));
  }

  /** Heads and rocker shafts that are off, each once: its mark, and in words what it is. */
  public List<PartState> listOff() {
    return Stream.of(BigPartKind.HEAD, BigPartKind.ROCKER_SHAFT)
        .flatMap(
            kind ->
                layout.cylinders().stream()
                    .map(cylinder -> new ValveSpot(cylinder, ValveSide.EXHAUST))
                    .flatMap(spot -> bigParts.apply(kind, spot).stream()))
        .distinct()
        .filter(big -> !big.isOn())
        .map(EngineStates::named)
        .toList();
  }

  private static PartState named(BigPartAt big) {
    PartState state = state(big);
    return new PartState(state.look(), state.sign(), big.part().name().kind().word());
  }

  private Optional<PartState> findOff(CarrierFigure figure) {
    return bigParts
        .apply(figure.kind(), new ValveSpot(figure.cylinder(), ValveSide.EXHAUST))
        .filter(found -> !found.isOn())
        .map(EngineStates::state);
  }

  private static PartState state(BigPartAt big) {
    return switch (big.where()) {
      case OUT, RETIRED -> PartState.OUT;
      case WASHING -> PartState.WASHING;
      case AT_SHOP -> PartState.AT_SHOP;
      case LOST -> PartState.MISSING;
      case IN_ENGINE -> PartState.IN;
      case FITTED -> PartState.FITTED;
    };
  }

  /** What states tell of a head or shaft that is off; empty where it is on or they tell nothing. */
  static Optional<PartState> findOff(Function<Place, PartState> states, CarrierFigure figure) {
    return states instanceof EngineStates engine ? engine.findOff(figure) : Optional.empty();
  }

  /** Whether states tell that a part never came out of what carries it, and that this is off. */
  static boolean wentWithCarrier(Function<Place, PartState> states, Place place) {
    return states instanceof EngineStates engine
        && engine.parts.apply(place).sign() == Sign.IN
        && !engine.mustBeOn(place)
        && isCarrierOff(states, place);
  }

  /** Whether states tell that what carries a place is off. */
  static boolean isCarrierOff(Function<Place, PartState> states, Place place) {
    return states instanceof EngineStates engine
        && engine.findCarrier(place).filter(carrier -> !carrier.isOn()).isPresent();
  }
}
