package wherefrom.job.print;

/**
 * Label stock that can be printed on.
 *
 * @param name what it is chosen by, such as {@code a4-3x8-63.5x33.9}, or the path of the user's own
 *     file
 * @param title what a person reads
 * @param columns labels across the page
 * @param rows labels down the page
 * @param dpi dots per inch of the printer it is meant for
 */
public record Stock(String name, String title, int columns, int rows, int dpi) {
  public int labelsPerPage() {
    return columns * rows;
  }
}
