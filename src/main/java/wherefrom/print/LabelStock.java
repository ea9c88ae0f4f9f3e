package wherefrom.print;

import wherefrom.job.print.Stock;
import wherefrom.quantity.Length;

/**
 * Label stock: the page, and where its labels lie.
 *
 * @param name short name: small letters, digits, points and hyphens
 * @param title what a person reads
 * @param left from the page's left edge to the first label
 * @param top from the page's top edge to the first label
 * @param gapAcross between labels side by side
 * @param gapDown between labels one above the other
 * @param dpi dots per inch of the printer it is meant for
 * @param keepOut kept free at one short end, with a mark to punch the hole; zero for none
 * @param cutMarks whether ticks show where to cut
 */
record LabelStock(
    String name,
    String title,
    Medium medium,
    Size page,
    Size label,
    int columns,
    int rows,
    Length left,
    Length top,
    Length gapAcross,
    Length gapDown,
    int dpi,
    Length keepOut,
    boolean cutMarks) {

  int labelsPerPage() {
    return columns * rows;
  }

  /** Where a label lies on the page; counted from 0, row by row. */
  Box labelBox(int index) {
    int column = index % columns;
    int row = index / columns;
    double width = label.width().millimetres();
    double height = label.height().millimetres();
    return new Box(
        left.millimetres() + column * (width + gapAcross.millimetres()),
        top.millimetres() + row * (height + gapDown.millimetres()),
        width,
        height);
  }

  /** How far the cutting ticks reach out from the labels; 0 without ticks. */
  double ticksMm() {
    return cutMarks ? CutTicks.LENGTH_MM : 0;
  }

  Stock asStock(String chosenBy) {
    return new Stock(chosenBy, title, columns, rows, dpi);
  }
}
