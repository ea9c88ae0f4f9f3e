package wherefrom.ui.measure;

/**
 * A member of a set in a plot.
 *
 * @param away from the middle of the set, or from the line
 * @param band half the width of the uncertainty bar, at two standard uncertainties
 * @param odd whether it stands out
 */
record SetDot(String name, double away, double band, boolean odd) {}
