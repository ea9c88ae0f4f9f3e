package wherefrom.drawing;

import wherefrom.engine.ValveSide;

/**
 * IN and EX outside the heads, at each valve, so that a place is told from its neighbor by letters,
 * not by its exhaust stub alone. They stand where they cost the drawing next to nothing.
 */
final class SideLetters {
  /** The height of their row, in the size of its letters. */
  private static final double ROW = 1.05;

  /** So much of the pitch that the room gives stays at least. */
  private static final double KEPT = 0.86;

  /** From a word to the next, in the size of its letters. */
  private static final double BETWEEN = 0.2;

  private SideLetters() {}

  static String of(ValveSide side) {
    return side == ValveSide.EXHAUST ? "EX" : "IN";
  }

  /** Their size: as the person set it. */
  static double size(Glass glass) {
    return glass.letter() * glass.factor();
  }

  /** The height of a row of them, in the drawing's unit. */
  static double row(Glass glass) {
    return ROW * size(glass);
  }

  /**
   * Whether they are written.
   *
   * @param free the pitch without them
   * @param pitch the pitch with them
   */
  static boolean fit(double free, double pitch, Glass glass) {
    double word = Letters.width("EX", size(glass), true) + BETWEEN * size(glass);
    boolean zones = free - glass.gap() < glass.finger() || pitch - glass.gap() >= glass.finger();
    return pitch >= KEPT * free && word <= pitch / 2 && zones;
  }
}
