package wherefrom.print;

/**
 * How a row of words on a label looks and how it gives way. Heights are those of capitals in
 * millimetres.
 */
enum RowStyle {
  /** The place in large print, read from the other side of the bench. */
  FIGURES(7, 5, 45, true, false, 0),
  /** What it is on. */
  KIND(2.8, 2, 8, true, false, 0),
  /** The same for what is no part: white on black. */
  BAND(2.3, 1.8, 7, true, false, 0),
  WORDS(2, 1.6, 5, false, true, 1),
  /** What a card does or stands for: never shortened. */
  CARD_WORDS(2, 1.6, 5, false, false, 0),
  /** What must not be turned. */
  MARK(2, 1.6, 5, true, false, 0),
  /** The same with an arrow before it. */
  ARROW(2, 1.6, 5, true, false, 0),
  JOB(1.9, 1.5, 4, false, true, 0),
  /** A line to write on. */
  WRITE_ON(3.6, 3, 9, false, true, 2),
  /** The code that is typed when the symbol cannot be read. */
  CODE(4.2, 4, 12, true, false, 0),
  /** The same with a line to write on behind it, where the label is wide. */
  CODE_AND_LINE(4.4, 4, 12, true, false, 0);

  /** The height at which rows stand in good proportion. */
  final double base;

  final double floor;
  final double ceiling;
  final boolean bold;

  /** Words that may not be shortened shrink below their floor instead. */
  final boolean mayShorten;

  /** Rows with the lowest number above 0 are left out first; 0 stays. */
  final int leftOut;

  RowStyle(
      double base, double floor, double ceiling, boolean bold, boolean mayShorten, int leftOut) {
    this.base = base;
    this.floor = floor;
    this.ceiling = ceiling;
    this.bold = bold;
    this.mayShorten = mayShorten;
    this.leftOut = leftOut;
  }
}
