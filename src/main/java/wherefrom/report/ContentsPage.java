package wherefrom.report;

import java.io.IOException;
import java.util.List;
import wherefrom.pdf.Book;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;
import wherefrom.pdf.PaperPage.Side;

/** What stands where, and the fields that a hand fills in. */
final class ContentsPage {
  private static final List<String> FIELDS =
      List.of(
          "engine number, casting marks",
          "owner, address, telephone",
          "machine shop, address, telephone",
          "oil, fuel, first start on");
  private static final double ROW = 4.6;

  /** On paper that is less high. */
  private static final double LOW_ROW = 4.1;

  private ContentsPage() {}

  /** How high the contents are with so many entries. */
  static double height(Flow flow, int entries) {
    return row(flow) * entries + 6;
  }

  private static double row(Flow flow) {
    return flow.shorter() > 0 ? LOW_ROW : ROW;
  }

  /** Lines to write on, two beside each other. */
  static void fields(Flow flow) throws IOException {
    double half = (Flow.WIDE - 6) / 2;
    for (int at = 0; at < FIELDS.size(); at++) {
      double x = Flow.LEFT + (at % 2) * (half + 6);
      double y = flow.y() + 8 + (at / 2) * 14;
      flow.page().line(x, y, x + half, y, 0.25, Ink.BLACK);
      flow.page().words(x, y + 3.2, FIELDS.get(at), 2.6, false, Side.BEGIN, Ink.DARK);
    }
    flow.down(30 - flow.shorter() / 6);
  }

  /** Each entry with its page. */
  static void contents(Flow flow, PaperPage page, double y) throws IOException {
    double foot = y;
    for (Book.Entry entry : flow.contents()) {
      foot += row(flow);
      page.words(Flow.LEFT, foot, entry.title(), Flow.TEXT, false);
      page.words(Flow.RIGHT, foot, "" + entry.page(), Flow.TEXT, true, Side.END, Ink.BLACK);
      page.line(Flow.LEFT, foot + 1.1, Flow.RIGHT, foot + 1.1, 0.1, Ink.GREY);
    }
  }
}
