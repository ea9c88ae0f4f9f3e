package wherefrom.drawing;

import wherefrom.engine.Layout;
import wherefrom.engine.RockerMount;

/**
 * Whether a cylinder's number finds room between its parts. A number is never written smaller than
 * the least letter; where the drawing is too small for that the numbers stand outside the engine.
 */
final class NumberFit {
  /** The height of a row of numbers, in the size of its letters. */
  static final double ROW = 1.15;

  /** Between two stud rockers at their widest, in pitches. */
  private static final double BESIDE_ROCKERS = 0.5 - 2 * 0.092;

  /** Between two pushrods, where the rockers lie on a shaft. */
  private static final double BESIDE_PUSHRODS = 0.5 - 2 * 0.075;

  /** Across a rod bearing's end view, within its shells. */
  private static final double IN_BEARING = 2 * EngineGeometry.ROD_RADIUS * 0.72;

  private static final double ABOVE_SIZE = 0.24;
  private static final double BELOW_SIZE = 0.17;

  /** What a number may grow to between the marks of its two valves, in pitches. */
  private static final double BESIDE_MARKS = 0.29;

  /** The same within a rod's two shells, which lie round it. */
  private static final double IN_RING = 0.32;

  /** A digit's ink, and from a digit to the next, in the size. */
  private static final double INK = 0.55;

  private static final double NEXT = 0.65;

  private NumberFit() {}

  static boolean isTight(Layout layout, View view, double pitch, Glass glass) {
    return glass.letter() * wide(layout) > room(layout, view) * pitch;
  }

  /** The size of a number: grown with the person's text as far as there is room. */
  static double size(EngineGeometry at) {
    Glass glass = at.glass();
    double least = glass.letter();
    double share = at.view() == View.ABOVE ? ABOVE_SIZE : BELOW_SIZE;
    double usual = Math.max(least, share * at.pitch());
    double most = room(at.layout(), at.view()) * at.pitch() / wide(at.layout());
    if (at.hasNumbersOutside() || usual >= most) {
      return at.hasNumbersOutside() ? least : usual;
    }
    double beside = (at.view() == View.ABOVE ? BESIDE_MARKS : IN_RING) * at.pitch();
    return Math.max(usual, Math.min(least * glass.factor(), Math.min(beside, most)));
  }

  /** Whether there is room for the numbers at all: side by side, a pitch from each other. */
  static boolean isWritten(EngineGeometry at) {
    double wide = (wide(at.layout()) + NEXT - INK) * at.glass().letter();
    return !at.hasNumbersOutside() || wide < at.pitch();
  }

  private static double room(Layout layout, View view) {
    if (view == View.BELOW) {
      return IN_BEARING;
    }
    return layout.rockers() == RockerMount.SHAFT ? BESIDE_PUSHRODS : BESIDE_ROCKERS;
  }

  private static double wide(Layout layout) {
    return layout.cylinders().size() > 9 ? NEXT + INK : INK;
  }
}
