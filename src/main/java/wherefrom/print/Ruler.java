package wherefrom.print;

import java.util.ArrayList;
import java.util.List;

/** A printed ruler to hold a real one against. */
final class Ruler {
  /** The longest ruler, where the paper has room. */
  static final int LONGEST_MM = 100;

  private static final double THICK = 0.2;
  private static final double LONG_TICK = 3;
  private static final double SHORT_TICK = 1.5;

  private Ruler() {}

  /** The longest ruler in whole tens that fits; 0 when not even 10 mm do. */
  static int fitting(double millimetres) {
    return Math.min(LONGEST_MM, (int) Math.floor(millimetres / 10) * 10);
  }

  /** From a point to the right, its ticks upward. */
  static List<PaperMark> across(double x, double y, int length) {
    List<PaperMark> marks = new ArrayList<>();
    marks.add(new PaperMark.Line(x, y, x + length, y, THICK));
    for (int mm = 0; mm <= length; mm += 5) {
      marks.add(new PaperMark.Line(x + mm, y, x + mm, y - tick(mm), THICK));
    }
    return marks;
  }

  /** From a point downwards, its ticks to the left. */
  static List<PaperMark> down(double x, double y, int length) {
    List<PaperMark> marks = new ArrayList<>();
    marks.add(new PaperMark.Line(x, y, x, y + length, THICK));
    for (int mm = 0; mm <= length; mm += 5) {
      marks.add(new PaperMark.Line(x, y + mm, x - tick(mm), y + mm, THICK));
    }
    return marks;
  }

  private static double tick(int mm) {
    return mm % 10 == 0 ? LONG_TICK : SHORT_TICK;
  }
}
