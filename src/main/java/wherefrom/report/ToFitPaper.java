package wherefrom.report;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wherefrom.files.Outgoing;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.ToFitSheet;
import wherefrom.pdf.Book;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;
import wherefrom.pdf.PaperPage.Side;

/** The parts still to fit, section by section, each with a box to tick; two columns. */
final class ToFitPaper {
  private static final double EDGE = 10;
  private static final double TOP = 24;
  private static final double GAP = 6;
  private static final double A4_ROW = 6;
  private static final double TEXT = 3.1;
  private static final int COLUMNS = 2;

  private final ToFitSheet plan;
  private final PaperSize size;
  private final Book book;
  private final double row;
  private PaperPage page;
  private int column;
  private double y = TOP;

  private ToFitPaper(ToFitSheet plan, PaperSize size, Book book) throws IOException {
    this.plan = plan;
    this.size = size;
    this.book = book;
    this.row = A4_ROW * Math.min(1, size.height() / PaperSize.A4.height());
    this.page = begin();
  }

  static void write(ToFitSheet plan, PaperSize size, Outgoing pdf) throws IOException {
    try (Book book = new Book("Still to fit: " + plan.job())) {
      new ToFitPaper(plan, size, book).list();
      Feet.write(book, plan.job());
      book.save(pdf);
    }
  }

  private PaperPage begin() throws IOException {
    PaperPage next = book.page(size, false);
    String count = plan.places().size() + " of " + plan.engine().states().size() + " places";
    double room = next.width() - EDGE - Flow.LEFT - next.widthOf(count, 3.6, false) - 4;
    String title = next.shorten("Still to fit: " + plan.job(), 6, true, room);
    next.words(Flow.LEFT, EDGE + 6, title, 6, true);
    next.words(next.width() - EDGE, EDGE + 6, count, 3.6, false, Side.END, Ink.BLACK);
    return next;
  }

  private void list() throws IOException {
    if (plan.places().isEmpty()) {
      page.words(Flow.LEFT, y + 4, "Every place is filled.", 4, false);
    }
    Map<String, List<ToFitSheet.Open>> sections =
        plan.places().stream()
            .collect(
                Collectors.groupingBy(
                    ToFitSheet.Open::section, LinkedHashMap::new, Collectors.toList()));
    for (Map.Entry<String, List<ToFitSheet.Open>> section : sections.entrySet()) {
      need(3 * row);
      page.words(x(), y + 4, section.getKey(), 4, true);
      y += row + 1;
      for (ToFitSheet.Open open : section.getValue()) {
        need(row);
        row(open.place().words(), open.tag(), open.onBench() ? "" : open.is());
      }
      y += 3;
    }
    beside();
  }

  /** Big parts, bags and gaskets, each group under its name. */
  private void beside() throws IOException {
    String group = "";
    for (ToFitSheet.Beside one : plan.beside()) {
      if (!one.group().equals(group)) {
        need(3 * row);
        y += group.isEmpty() ? 0 : 3;
        page.words(x(), y + 4, one.group(), 4, true);
        y += row + 1;
        group = one.group();
      }
      need(row);
      row(one.what(), one.tag(), one.is());
    }
  }

  private double wide() {
    return (page.width() - Flow.LEFT - EDGE - (COLUMNS - 1) * GAP) / COLUMNS;
  }

  private double x() {
    return Flow.LEFT + column * (wide() + GAP);
  }

  private void need(double high) throws IOException {
    if (y + high <= page.height() - EDGE - 8) {
      return;
    }
    column++;
    y = TOP;
    if (column == COLUMNS) {
      column = 0;
      page = begin();
    }
  }

  private void row(String what, String code, String is) throws IOException {
    page.box(x(), y + 0.6, 3, 3, 0.35, Ink.BLACK);
    double from = x() + 5;
    double told = Math.min(wide() * 0.35, page.widthOf(is, 2.6, false));
    String shown = page.shorten(is, 2.6, false, told + 0.1);
    page.words(x() + wide(), y + 3.4, shown, 2.6, false, Side.END, Ink.DARK);
    double tag = x() + wide() - told - 2;
    page.words(tag, y + 3.4, code, TEXT, false, Side.END, Ink.BLACK);
    double room = tag - page.widthOf(code, TEXT, false) - 2 - from;
    page.words(from, y + 3.4, page.shorten(what, TEXT, true, room), TEXT, true);
    page.line(x(), y + 5, x() + wide(), y + 5, 0.14, Ink.GREY);
    y += row;
  }
}
