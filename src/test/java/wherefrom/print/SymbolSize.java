package wherefrom.print;

/**
 * Measures a printed symbol in a raster of its label, from the outer edges of its frame. An edge is
 * where the grey value crosses the middle, found between two dots.
 */
final class SymbolSize {
  private static final double MIDDLE = 127.5;
  private final Raster raster;

  SymbolSize(Raster raster) {
    this.raster = raster;
  }

  /** Distance in dots from the first to the last dark edge along a row between two columns. */
  double across(double row, double from, double to) {
    int y = (int) Math.round(row);
    double first = -1;
    double last = -1;
    for (int x = (int) from; x < to - 1; x++) {
      double here = raster.at(x, y) - MIDDLE;
      double next = raster.at(x + 1, y) - MIDDLE;
      if (here * next < 0) {
        double edge = x + 0.5 + here / (here - next);
        first = first < 0 ? edge : first;
        last = edge;
      }
    }
    return last - first;
  }

  /** The same along a column. */
  double down(double column, double from, double to) {
    int x = (int) Math.round(column);
    double first = -1;
    double last = -1;
    for (int y = (int) from; y < to - 1; y++) {
      double here = raster.at(x, y) - MIDDLE;
      double next = raster.at(x, y + 1) - MIDDLE;
      if (here * next < 0) {
        double edge = y + 0.5 + here / (here - next);
        first = first < 0 ? edge : first;
        last = edge;
      }
    }
    return last - first;
  }
}
