package wherefrom.job.print;

import java.util.List;

/**
 * What is to be printed.
 *
 * @param title stands in the sheet's margin and in the file's properties
 * @param faces one label each, in this order; none for the test page
 * @param setup what is printed on
 * @param testPage true for the page of outlines and rulers that shows how the paper lies
 */
public record PrintOrder(String title, List<Face> faces, PrintSetup setup, boolean testPage) {
  public PrintOrder {
    faces = List.copyOf(faces);
  }

  /** Tags and cards. */
  public static PrintOrder of(String title, List<? extends Face> faces, PrintSetup setup) {
    return new PrintOrder(title, List.copyOf(faces), setup, false);
  }

  /** The page of label outlines and rulers, to hold against a sheet of the stock. */
  public static PrintOrder testPage(PrintSetup setup) {
    return new PrintOrder("Test page", List.of(), setup, true);
  }
}
