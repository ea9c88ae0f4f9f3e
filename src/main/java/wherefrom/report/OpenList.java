package wherefrom.report;

import java.io.IOException;
import java.util.List;
import wherefrom.job.pages.RecordSection;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;
import wherefrom.pdf.PaperPage.Side;

/** What is to fit or not checked, each with a box to tick; over as many pages as it takes. */
final class OpenList {
  private static final double SIZE = 3.1;
  private static final double LINE = 4;
  private static final double BECAUSE = 92;

  private final List<RecordSection.Row> rows;
  private final String empty;
  private int next;

  OpenList(RecordSection section) {
    this.rows = section.rows();
    this.empty = section.empty();
  }

  boolean isDone() {
    return next >= rows.size();
  }

  void heading(Flow flow) throws IOException {
    String points = rows.size() + (rows.size() == 1 ? " point" : " points");
    flow.heading(
        next == 0 ? "To fit, or not checked" : "To fit, or not checked, continued", points);
    if (rows.isEmpty()) {
      flow.paragraph(empty, SIZE, Ink.BLACK);
    }
  }

  /** As many as fit above this; says how many follow. */
  void until(Flow flow, double foot) throws IOException {
    while (!isDone() && flow.y() + height(flow.page(), rows.get(next)) <= foot - LINE) {
      row(flow, rows.get(next++));
    }
    if (!isDone()) {
      String more = rows.size() - next + " more on page 2";
      flow.page().words(Flow.RIGHT, flow.y() + 3, more, SIZE, true, Side.END, Ink.BLACK);
      flow.down(LINE);
    }
  }

  /** All that are left, on more pages where they are many. */
  void rest(Flow flow) throws IOException {
    while (!isDone()) {
      flow.need(height(flow.page(), rows.get(next)));
      row(flow, rows.get(next++));
    }
  }

  private static List<String> what(PaperPage page, RecordSection.Row row) {
    return page.wrap(row.cells().get(0), SIZE, true, BECAUSE - 8);
  }

  private static List<String> because(PaperPage page, RecordSection.Row row) {
    return page.wrap(row.cells().get(1), SIZE, false, Flow.WIDE - BECAUSE);
  }

  private static double height(PaperPage page, RecordSection.Row row) {
    return Math.max(what(page, row).size(), because(page, row).size()) * LINE + 1.4;
  }

  private static void row(Flow flow, RecordSection.Row row) throws IOException {
    PaperPage page = flow.page();
    double y = flow.y();
    page.box(Flow.LEFT, y + 0.6, 2.6, 2.6, 0.35, Ink.BLACK);
    lines(page, what(page, row), Flow.LEFT + 4.8, y, true);
    lines(page, because(page, row), Flow.LEFT + BECAUSE, y, false);
    flow.down(height(page, row));
    page.line(Flow.LEFT, flow.y() - 0.9, Flow.RIGHT, flow.y() - 0.9, 0.14, Ink.GREY);
  }

  private static void lines(PaperPage page, List<String> lines, double x, double y, boolean bold)
      throws IOException {
    for (int at = 0; at < lines.size(); at++) {
      Ink ink = bold ? Ink.BLACK : Ink.DARK;
      page.words(x, y + 3 + at * LINE, lines.get(at), SIZE, bold, Side.BEGIN, ink);
    }
  }
}
