package wherefrom.report;

import java.io.IOException;
import java.util.List;
import wherefrom.job.BuiltVersion;
import wherefrom.pdf.Book;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;
import wherefrom.pdf.PaperPage.Side;

/** The foot of every page: the job, the program, and page of pages. */
final class Feet {
  private static final double EDGE = 10;

  private Feet() {}

  static void write(Book book, String job) throws IOException {
    List<PaperPage> pages = book.pages();
    for (int at = 0; at < pages.size(); at++) {
      PaperPage page = pages.get(at);
      double y = page.height() - EDGE;
      double left = page.width() > page.height() ? EDGE : Flow.LEFT;
      String program = " · " + BuiltVersion.words();
      double room = page.width() - EDGE - 20 - left - page.widthOf(program, 2.4, false);
      String words = page.shorten(job, 2.4, false, room) + program;
      page.words(left, y, words, 2.4, false, Side.BEGIN, Ink.DARK);
      String number = (at + 1) + " / " + pages.size();
      page.words(page.width() - EDGE - 3, y, number, 3.2, true, Side.END, Ink.BLACK);
    }
  }
}
