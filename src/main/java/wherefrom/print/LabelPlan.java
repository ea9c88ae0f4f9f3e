package wherefrom.print;

import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.parts.LabelFrame;

/**
 * Where things go on a label: the symbol with its frame, the words, and what stays free for a
 * punched hole. The same for every tag of a stock.
 *
 * @param moduleDots printer dots to one module of the symbol
 * @param dpi the printer's dots per inch
 * @param symbol the frame and its white margin; its size is exact, its place is moved to whole dots
 *     when it is drawn
 * @param words room for the words
 * @param label the whole label, its top left corner at 0, 0
 * @param keepOut what stays free for the hole; no width when there is none
 */
record LabelPlan(int moduleDots, int dpi, Box symbol, Box words, Box label, Box keepOut) {
  /** The least module for scanners in trade, GS1 General Specifications (retail range). */
  static final double LEAST_MODULE_MM = 0.396;

  /** With less room than this there are no words that help. */
  static final double LEAST_TEXT_MM = 16;

  /** Room for a typed code 4 mm high. */
  private static final double GOOD_TEXT_MM = 24;

  private static final double TEXT_SHARE = 0.42;

  /** Printers place labels to about half a millimetre; the margin adds to the symbol's own. */
  private static final double EDGE_MM = 0.75;

  private static final double GAP_MM = 0.6;

  private static final double WIDE_MM = 36;
  private static final double WIDE_SHAPE = 1.3;

  /** The plan with the largest module; empty when no tag fits that can be read. */
  static Optional<LabelPlan> find(LabelStock stock, int dpi) {
    return attempt(stock, dpi, GOOD_TEXT_MM, TEXT_SHARE)
        .or(() -> attempt(stock, dpi, LEAST_TEXT_MM, 0));
  }

  private static Optional<LabelPlan> attempt(
      LabelStock stock, int dpi, double leastText, double share) {
    Draft draft = Draft.of(stock, dpi);
    return Stream.of(draft.beside(leastText, share), draft.below(leastText, share))
        .filter(plan -> plan.moduleMm() >= LEAST_MODULE_MM)
        .reduce((one, other) -> other.moduleDots > one.moduleDots ? other : one);
  }

  /** Whether a line to write on goes behind the code rather than above it. */
  boolean wide() {
    return words.width() >= WIDE_MM && words.width() > WIDE_SHAPE * words.height();
  }

  double moduleMm() {
    return PrinterDots.millimetres(moduleDots, dpi);
  }

  /** A label before it is known how large the symbol is. */
  private record Draft(int dpi, double width, double height, double hole, boolean holeOnTop) {

    static Draft of(LabelStock stock, int dpi) {
      double width = stock.label().width().millimetres();
      double height = stock.label().height().millimetres();
      return new Draft(dpi, width, height, stock.keepOut().millimetres(), height > width);
    }

    double inset() {
      return Math.min(2, 0.06 * Math.min(width, height));
    }

    double left() {
      return holeOnTop ? inset() : Math.max(inset(), hole);
    }

    double top() {
      return holeOnTop ? Math.max(inset(), hole) : inset();
    }

    /** The words on the left, the symbol on the right. */
    LabelPlan beside(double leastText, double share) {
      double free = width - left();
      double text = Math.max(leastText, share * free);
      double clear = holeOnTop ? Math.max(EDGE_MM, hole) : EDGE_MM;
      int dots = dots(Math.min(height - clear - EDGE_MM, free - EDGE_MM - GAP_MM - text));
      double side = side(dots);
      double across = Math.max(left() + text + GAP_MM, width - side - (height - side) / 2);
      Box symbol =
          new Box(
              Math.min(across, width - side - EDGE_MM),
              clear + (height - clear - EDGE_MM - side) / 2,
              side,
              side);
      Box words = new Box(left(), top(), symbol.x() - GAP_MM - left(), height - top() - inset());
      return plan(dots, symbol, words);
    }

    /** The words above, the symbol below. */
    LabelPlan below(double leastText, double share) {
      double free = height - top();
      double text = Math.max(leastText, share * free);
      double clear = holeOnTop ? EDGE_MM : Math.max(EDGE_MM, hole);
      int dots = dots(Math.min(width - clear - EDGE_MM, free - EDGE_MM - GAP_MM - text));
      double side = side(dots);
      Box symbol =
          new Box(
              clear + (width - clear - EDGE_MM - side) / 2,
              height - side - EDGE_MM - Math.max(0, (width - clear - side) / 2 - EDGE_MM) / 2,
              side,
              side);
      Box words = new Box(left(), top(), width - left() - inset(), symbol.y() - GAP_MM - top());
      return plan(dots, symbol, words);
    }

    private LabelPlan plan(int dots, Box symbol, Box words) {
      Box keepOut = holeOnTop ? new Box(0, 0, width, hole) : new Box(0, 0, hole, height);
      return new LabelPlan(dots, dpi, symbol, words, new Box(0, 0, width, height), keepOut);
    }

    private int dots(double room) {
      return Math.max(0, PrinterDots.fitting(room / LabelFrame.WIDTH, dpi));
    }

    private double side(int dots) {
      return PrinterDots.millimetres(dots * LabelFrame.WIDTH, dpi);
    }
  }
}
