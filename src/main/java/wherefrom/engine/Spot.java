package wherefrom.engine;

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
}
