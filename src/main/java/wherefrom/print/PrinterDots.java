package wherefrom.print;

import java.util.Set;

/** The printers' dots, in which every module is a whole number. */
final class PrinterDots {
  private static final Set<Integer> KNOWN = Set.of(203, 300, 600);
  private static final double MM_PER_INCH = 25.4;

  private PrinterDots() {}

  /** Whether printers of so many dots per inch are known: 203, 300 or 600. */
  static boolean isKnown(int dpi) {
    return KNOWN.contains(dpi);
  }

  static double millimetres(int dots, int dpi) {
    return dots * MM_PER_INCH / dpi;
  }

  /** The dots that fit into a length whole. */
  static int fitting(double millimetres, int dpi) {
    return (int) Math.floor(millimetres * dpi / MM_PER_INCH + 1e-6);
  }

  /** The nearest dot. */
  static long nearest(double millimetres, int dpi) {
    return Math.round(millimetres * dpi / MM_PER_INCH);
  }
}
