package wherefrom.engine;

import java.util.Optional;
import java.util.function.Function;

/**
 * A spot in the engine that a person can point at. Which part sits there is said by the part's
 * kind: a spot and a kind together are a place.
 */
public sealed interface Spot permits ValveSpot, BoreSpot, RodSpot, MainSpot, CamBearingSpot {

  /** Where it is, in words: {@code cylinder 3, exhaust}. */
  String words();

  /** The same in large print: {@code 3 EX}. */
  String figures();

  /** The same in full words, to be read from the engine: {@code 3 EX}, {@code rod 8, lower}. */
  String brief();

  /** The short name used in files: {@code 3EX}, {@code R3U}, {@code M2L}. Never changes. */
  String key();

  /** The number of the cylinder or of the bearing. */
  int number();

  /** The cylinder that it is at; empty for a main and a camshaft bearing. */
  Optional<Integer> findCylinder();

  /** Which half of a bearing it is; empty for what has no halves. */
  Optional<ShellHalf> findHalf();

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<ValveSpot, R> valve,
      Function<BoreSpot, R> bore,
      Function<RodSpot, R> rod,
      Function<MainSpot, R> main,
      Function<CamBearingSpot, R> camBearing) {
    if (this instanceof ValveSpot one) {
      return valve.apply(one);
    }
    if (this instanceof BoreSpot one) {
      return bore.apply(one);
    }
    if (this instanceof RodSpot one) {
      return rod.apply(one);
    }
    if (this instanceof MainSpot one) {
      return main.apply(one);
    }
    return camBearing.apply((CamBearingSpot) this);
  }
}
