package wherefrom.workings.chart;

/** Where the plot of a chart lies on a surface, and which rows of words stand round it. */
final class ChartRoom {
  /** From one row of words to the next, in heights of a capital. */
  static final double ROW = 1.9;

  /** A surface lower than this, in heights of a capital, has one row of names and no foot. */
  private static final double LOW = 18;

  /** One lower than this has no row of verdicts: dots say them, and the words beside the plot. */
  private static final double LOWEST = 11;

  /** So high is what is drawn above a foot at least, with the row above it. */
  private static final double ABOVE_FOOT = 9;

  private final Chart chart;
  private final Surface surface;
  private final double left;
  private final double right;
  private final double top;
  private final double bottom;
  private final int nameRows;
  private final boolean verdicts;
  private final boolean low;

  ChartRoom(Chart chart, Surface surface) {
    this.chart = chart;
    this.surface = surface;
    double letter = surface.capital();
    double figures =
        chart.up().ticks().stream()
            .mapToDouble(tick -> surface.widthOf(tick.words()))
            .max()
            .orElse(0);
    this.left = figures + 1.6 * letter;
    this.right = surface.width() - 1.5 * letter;
    this.verdicts =
        !isLow(LOWEST) && chart.columns().stream().anyMatch(one -> !one.verdict().isEmpty());
    this.low = isLow(LOW) && (isBeside(chart.across().words()) || isLow(leastWithFoot()));
    this.top = (low ? 2.4 : 3.4) * letter;
    this.nameRows = isCrowded() && !low ? 2 : 1;
    int rows = nameRows + (verdicts ? 1 : 0) + (low ? 0 : 1);
    this.bottom = surface.height() - (0.6 + ROW * rows) * letter;
  }

  double left() {
    return left;
  }

  double right() {
    return right;
  }

  double top() {
    return top;
  }

  double bottom() {
    return bottom;
  }

  /** Rows that the names across stand in. */
  int nameRows() {
    return nameRows;
  }

  /** Whether a row below the names says what was found. */
  boolean verdicts() {
    return verdicts;
  }

  /** Whether the axis across is named above the plot, if at all: a foot has no room. */
  boolean low() {
    return low;
  }

  private boolean isLow(double capitals) {
    return surface.height() < capitals * surface.capital();
  }

  /** The least height at which a foot leaves room for the plot, in heights of a capital. */
  private double leastWithFoot() {
    int rows = (isCrowded() ? 2 : 1) + (verdicts ? 1 : 0) + 1;
    return ABOVE_FOOT + 0.6 + ROW * rows;
  }

  /** Half the width of a limit's mark. */
  double half() {
    return Math.min(4 * surface.capital(), 0.3 * step());
  }

  /** Whether names would touch in one row. */
  private boolean isCrowded() {
    return chart.across().named()
        && chart.across().ticks().stream()
            .anyMatch(tick -> surface.widthOf(tick.words()) + 0.8 * surface.capital() > step());
  }

  private double step() {
    return (right - left) / chart.across().ticks().size();
  }

  /** Whether words have room in the row above the plot, beside the name of the axis up. */
  boolean isBeside(String words) {
    double room = right - surface.widthOf(chart.up().words()) - 2 * surface.capital();
    return surface.widthOf(words) <= room;
  }

  double x(double across) {
    return left + chart.across().part(across) * (right - left);
  }

  double y(double up) {
    return bottom - chart.up().part(up) * (bottom - top);
  }
}
