package wherefrom.referee;

/**
 * One place of one kind of part.
 *
 * @param at its number in the engine, from 0
 * @param spot {@code 1EX}, {@code B1}, {@code R1U}, {@code M2L} or {@code C1}
 * @param journal {@code R1} or {@code M2} where two halves are clamped together; else the spot
 * @param cylinder 0 where there is none
 * @param bank empty where there is none
 * @param section what is closed as one
 */
record Slot(
    int at, Kind kind, String spot, String journal, int cylinder, String bank, String section) {

  /** {@code lifter@1EX} */
  String key() {
    return kind.key + "@" + spot;
  }

  boolean isUpper() {
    return spot.endsWith("U");
  }

  boolean isExhaust() {
    return spot.endsWith("EX");
  }
}
