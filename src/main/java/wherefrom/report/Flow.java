package wherefrom.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import wherefrom.job.pages.PaperSize;
import wherefrom.pdf.Book;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;
import wherefrom.pdf.PaperPage.Side;

/**
 * Pages of a record for the binder, written from above to below. The left margin leaves room for
 * the punch. Lengths are in mm.
 */
final class Flow {
  static final double LEFT = 25;
  static final double RIGHT = 197;
  static final double WIDE = RIGHT - LEFT;
  static final double TOP = 13;

  static final double SMALL = 2.7;
  static final double TEXT = 3.1;
  static final double HEADING = 5;
  private static final double HEAD = 17;
  private static final double MARGIN = 19;
  private static final double PUNCH = 40;

  private final Book book;
  private final PaperSize paper;
  private final List<Book.Entry> contents = new ArrayList<>();
  private PaperPage page;
  private String title = "";
  private double y = TOP;

  /**
   * Begins the first page.
   *
   * @param paper upright; what is wider than A4 has a wider right margin
   */
  Flow(Book book, PaperSize paper) throws IOException {
    this.book = book;
    this.paper = paper;
    this.page = bare();
  }

  /** A page with nothing but the places of the punch. */
  private PaperPage bare() throws IOException {
    PaperPage next = book.page(paper, false);
    next.punch(12, paper.height() / 2 - PUNCH, 2.8);
    next.punch(12, paper.height() / 2 + PUNCH, 2.8);
    return next;
  }

  PaperPage page() {
    return page;
  }

  /** Where the next thing begins. */
  double y() {
    return y;
  }

  void down(double mm) {
    y += mm;
  }

  void to(double mm) {
    y = mm;
  }

  /** Nothing but the foot of the page stands below this. */
  double foot() {
    return paper.height() - MARGIN;
  }

  /** How much less high the page is than A4. */
  double shorter() {
    return Math.max(0, PaperSize.A4.height() - paper.height());
  }

  /** How much is left of the page. */
  double left() {
    return foot() - y;
  }

  List<Book.Entry> contents() {
    return contents;
  }

  /** Notes the page that is written on in the contents. */
  void enter(String name) {
    contents.add(new Book.Entry(name, book.pages().size()));
  }

  /** A new page without a head. */
  void turn() throws IOException {
    page = bare();
    y = TOP;
  }

  /** A new page with a head. */
  void begin(String name, String beside) throws IOException {
    turn();
    title = name;
    head(name, beside);
  }

  private void head(String name, String beside) throws IOException {
    page.tag(LEFT, TOP, WIDE, HEAD, 5, 1.2);
    double room = beside.isEmpty() ? WIDE - 20 : WIDE / 2 - 8;
    page.words(LEFT + 14, TOP + 10.6, page.shorten(name, 6, true, room), 6, true);
    String words = page.shorten(beside, 3.4, false, WIDE / 2 - 12);
    page.words(RIGHT - 5, TOP + 10.2, words, 3.4, false, Side.END, Ink.BLACK);
    y = TOP + HEAD + 8;
  }

  /** Turns the page where less than this is left of it. */
  void need(double high) throws IOException {
    if (y + high > foot()) {
      turn();
      head(title.endsWith(", continued") ? title : title + ", continued", "");
    }
  }

  /** What the pages are about, where they are begun without a head. */
  void about(String name) {
    title = name;
  }

  /** A heading over a thick line; y is then where its first row begins. */
  void heading(String words, String beside) throws IOException {
    need(HEADING + 16);
    page.words(LEFT, y + HEADING * 0.8, words, HEADING, true);
    page.words(RIGHT, y + HEADING * 0.8, beside, 3.6, false, Side.END, Ink.BLACK);
    y += HEADING + 1.6;
    page.line(LEFT, y, RIGHT, y, 0.5, Ink.BLACK);
    y += 2;
  }

  void paragraph(String words, double size, Ink ink) throws IOException {
    for (String line : page.wrap(words, size, false, WIDE)) {
      need(size * 1.35);
      page.words(LEFT, y + size * 0.85, line, size, false, Side.BEGIN, ink);
      y += size * 1.35;
    }
  }
}
