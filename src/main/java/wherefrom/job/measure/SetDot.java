package wherefrom.job.measure;

/**
 * A member of a set in a plot.
 *
 * @param away from the middle of the set, or from the line
 * @param band half the width of the uncertainty bar, at two standard uncertainties
 * @param word why it stands out, such as {@code odd}; empty where it does not
 */
public record SetDot(String name, double away, double band, String word) {

  /** Whether it stands out. */
  public boolean odd() {
    return !word.isEmpty();
  }
}
