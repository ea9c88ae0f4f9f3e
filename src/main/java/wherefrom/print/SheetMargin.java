package wherefrom.print;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.BuiltVersion;
import wherefrom.pdf.Typeface;

/**
 * What stands in the margins of a sheet where they are wide enough: the ruler above the labels, the
 * safety words and the page's number below.
 */
final class SheetMargin {
  /** Printed and shown wherever the product advises. */
  static final String OUTRANKED =
      "Service information for your exact engine outranks this tool. So does a"
          + " qualified machinist.";

  /** What most office printers leave white at the edge is up to about 5 mm. */
  private static final double UNPRINTABLE_MM = 5;

  private static final double TOP_ROOM_MM = 9.5;
  private static final double BOTTOM_ROOM_MM = 8.5;
  private static final double CAP_MM = 1.7;
  private static final double CLEAR_MM = 1.8;

  private final LabelStock stock;
  private final LabelLetters letters;
  private final double left;
  private final double right;

  SheetMargin(LabelStock stock, LabelLetters letters) {
    this.stock = stock;
    this.letters = letters;
    double width = stock.page().width().millimetres();
    left = Math.max(UNPRINTABLE_MM + 1, stock.left().millimetres());
    right = Math.min(width - UNPRINTABLE_MM - 1, stock.labelBox(stock.columns() - 1).right());
  }

  /** What every sheet has: the ruler and the safety words. */
  List<PaperMark> alike() {
    List<PaperMark> marks = new ArrayList<>();
    addRuler(marks);
    if (hasFooter()) {
      marks.add(safety());
    }
    return marks;
  }

  /** The title, the number of a page and the version of the program. */
  List<PaperMark> number(String title, int page, int pages) {
    if (!hasFooter()) {
      return List.of();
    }
    Typeface face = letters.regular();
    String number = " · " + page + "/" + pages + " · " + BuiltVersion.words();
    double space = (right - safety().box().right() - 4) / CAP_MM - face.width(number);
    String line = face.shorten(face.clean(title), space) + number;
    double width = face.width(line) * CAP_MM;
    return List.of(letters.words(line, false, right - width, footer(), CAP_MM));
  }

  private void addRuler(List<PaperMark> marks) {
    int length = Ruler.fitting(right - left - 40);
    if (stock.top().millimetres() < TOP_ROOM_MM || length < 10) {
      return;
    }
    double y = stock.top().millimetres() - CLEAR_MM - stock.ticksMm();
    marks.addAll(Ruler.across(left, y, length));
    double x = left + length + 3;
    String words =
        "This line must measure " + length + " mm. If not, print again at 100 %, actual size.";
    double cap = Math.min(CAP_MM, (right - x) / letters.regular().width(words));
    marks.add(letters.words(words, false, x, y, cap));
  }

  private boolean hasFooter() {
    return stock.page().height().millimetres() - bottom() >= BOTTOM_ROOM_MM;
  }

  private PaperMark.Words safety() {
    return letters.words(OUTRANKED, false, left, footer(), CAP_MM);
  }

  /** What the words below the labels stand on. */
  private double footer() {
    return bottom() + CLEAR_MM + stock.ticksMm() + CAP_MM;
  }

  private double bottom() {
    return stock.labelBox(stock.labelsPerPage() - 1).bottom();
  }
}
