package wherefrom.report;

import java.io.IOException;
import java.util.List;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.KindOutline;
import wherefrom.drawing.View;
import wherefrom.files.Outgoing;
import wherefrom.files.Progress;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.RecordEngine;
import wherefrom.job.record.BuildRecord;
import wherefrom.job.shop.ShopSlip;
import wherefrom.pdf.Book;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;
import wherefrom.pdf.PaperPage.Side;

/**
 * The slip for the machine shop: fields of both sides, the places of what goes, each thing with
 * what is wanted and room for what was measured, and boxes to sign.
 */
final class SlipPaper {
  private static final double SYMBOL = 10;
  private static final double TEXT = 3.2;
  private static final double LINE = 4.2;
  private static final double WHAT = 17;
  private static final double WANTED = 78;
  private static final double BACK = 128;
  private static final double CELL = 14.6;
  private static final int CELLS = 3;

  /** The boxes to sign in, and what stands below them. */
  private static final double SIGNED = 27;

  private final ShopSlip slip;
  private final Flow flow;

  private SlipPaper(ShopSlip slip, Flow flow) {
    this.slip = slip;
    this.flow = flow;
  }

  static void write(ShopSlip slip, PaperSize size, Outgoing pdf) throws IOException {
    try (Book book = new Book("Machine shop, visit " + slip.visit().number() + ": " + slip.job())) {
      SlipPaper paper = new SlipPaper(slip, new Flow(book, size));
      paper.begin();
      for (int at = 0; at < slip.rows().size(); at++) {
        paper.row(slip.rows().get(at));
        Progress.step(at + 1, slip.rows().size());
      }
      paper.end();
      Feet.write(book, slip.job());
      book.save(pdf);
    }
  }

  private void begin() throws IOException {
    String day = slip.day().toString();
    PaperPage page = flow.page();
    flow.about("Machine shop, visit " + slip.visit().number());
    page.tag(Flow.LEFT, Flow.TOP, Flow.WIDE, 24, 7, 1.4);
    page.words(
        Flow.LEFT + 16, Flow.TOP + 8, "MACHINE SHOP, VISIT " + slip.visit().number(), 4, true);
    String job = page.shorten(slip.job(), 7, true, Flow.WIDE - 70);
    page.words(Flow.LEFT + 16, Flow.TOP + 17.6, job, 7, true);
    page.words(Flow.RIGHT - 6, Flow.TOP + 8, day, TEXT, false, Side.END, Ink.BLACK);
    String pieces = inAll(slip.visit().pieces());
    page.words(Flow.RIGHT - 6, Flow.TOP + 17.6, pieces, 4, true, Side.END, Ink.BLACK);
    flow.to(Flow.TOP + 26);
    fields("sender, telephone", "machine shop, telephone", "promised for", "price agreed");
    drawing();
    head();
  }

  /** {@code 7 pieces in all}. */
  static String inAll(int pieces) {
    return pieces + (pieces == 1 ? " piece in all" : " pieces in all");
  }

  /** Lines to write on, two beside each other. */
  private void fields(String... names) throws IOException {
    double half = (Flow.WIDE - 6) / 2;
    for (int at = 0; at < names.length; at++) {
      double x = Flow.LEFT + (at % 2) * (half + 6);
      double y = flow.y() + 9 + (at / 2) * 12;
      flow.page().line(x, y, x + half, y, 0.25, Ink.BLACK);
      flow.page().words(x, y + 3.2, names[at], 2.6, false, Side.BEGIN, Ink.DARK);
    }
    flow.down(9 + 12 * ((names.length + 1) / 2) - 3);
  }

  /** Boxes to sign in, two beside each other. */
  private void boxes(String... names) throws IOException {
    double half = (Flow.WIDE - 6) / 2;
    double y = flow.y() + 3;
    for (int at = 0; at < names.length; at++) {
      double x = Flow.LEFT + at * (half + 6);
      flow.page().box(x, y, half, 16, 0.25, Ink.BLACK);
      flow.page().words(x + 1.5, y + 3.2, names[at], 2.6, false, Side.BEGIN, Ink.DARK);
    }
    flow.down(22);
  }

  /** Where the tagged parts come from, and what is worked on; left out where there is neither. */
  private void drawing() throws IOException {
    RecordEngine engine = slip.engine();
    if (engine.states().isEmpty() && slip.worked().isEmpty()) {
      return;
    }
    EngineArt art = new EngineArt(engine, slip.worked());
    double half = (Flow.WIDE - 8) / 2;
    double y = flow.y() + 2;
    double above = art.side(flow.page(), View.ABOVE, Flow.LEFT, y, half, 46);
    double below = art.side(flow.page(), View.BELOW, Flow.LEFT + half + 8, y, half, 46);
    flow.to(Math.max(above, below) + 1);
    String rings = slip.worked().isEmpty() ? "" : " Rings: surfaces to work on.";
    String marked = engine.states().isEmpty() ? "" : "S: parts that go.";
    flow.paragraph((marked + rings).strip(), 2.6, Ink.DARK);
    flow.down(2);
  }

  private void head() throws IOException {
    flow.heading("What goes, and what is wanted", "");
    PaperPage page = flow.page();
    double y = flow.y() + 2.4;
    page.words(Flow.LEFT, y, "pieces", 2.6, false, Side.BEGIN, Ink.DARK);
    page.words(Flow.LEFT + WANTED, y, "wanted", 2.6, false, Side.BEGIN, Ink.DARK);
    page.words(Flow.LEFT + BACK, y, "measured on return", 2.6, false, Side.BEGIN, Ink.DARK);
    flow.down(4.4);
  }

  private void row(ShopSlip.Row row) throws IOException {
    List<String> what = wrap(row.what(), true, WANTED - WHAT - SYMBOL - 4);
    List<String> wanted = wrap(row.wanted(), false, BACK - WANTED - 3);
    List<String> size =
        row.size().isEmpty() ? List.of() : wrap(row.size(), true, BACK - WANTED - 3);
    int cells = (int) Math.ceil(row.surfaces().size() / (double) CELLS);
    double words = LINE * Math.max(what.size() + 1, wanted.size() + size.size());
    double high = Math.max(SYMBOL + 2, Math.max(words + 1.6, cells * 9.5));
    flow.need(high + 2);
    PaperPage page = flow.page();
    double y = flow.y();
    page.words(Flow.LEFT, y + 4.6, row.pieces() + " ×", 4.4, true);
    symbol(row, y);
    double x = Flow.LEFT + WHAT + SYMBOL + 2;
    lines(what, x, y, true);
    page.words(x, y + 3.4 + what.size() * LINE, row.tag(), TEXT, false, Side.BEGIN, Ink.DARK);
    lines(wanted, Flow.LEFT + WANTED, y, false);
    lines(size, Flow.LEFT + WANTED, y + wanted.size() * LINE, true);
    returned(row, y);
    flow.down(high + 1);
    page.line(Flow.LEFT, flow.y() - 0.6, Flow.RIGHT, flow.y() - 0.6, 0.14, Ink.GREY);
  }

  private List<String> wrap(String words, boolean bold, double wide) {
    return flow.page().wrap(words, TEXT, bold, wide);
  }

  private void lines(List<String> lines, double x, double y, boolean bold) throws IOException {
    for (int at = 0; at < lines.size(); at++) {
      flow.page().words(x, y + 3.4 + at * LINE, lines.get(at), TEXT, bold);
    }
  }

  private void symbol(ShopSlip.Row row, double y) throws IOException {
    if (row.kind().isPresent()) {
      flow.page()
          .shapes(
              KindOutline.of(
                  row.kind().get(),
                  slip.engine().layout(),
                  PaperPage.room(Flow.LEFT + WHAT - 1, y, SYMBOL, SYMBOL),
                  Book.GLASS),
              DrawnAs.IN);
    }
  }

  /** A box for each surface, or one for all. */
  private void returned(ShopSlip.Row row, double y) throws IOException {
    PaperPage page = flow.page();
    double x = Flow.LEFT + BACK;
    if (row.surfaces().isEmpty()) {
      page.box(x, y + 0.6, Flow.RIGHT - x, SYMBOL, 0.25, Ink.BLACK);
    }
    for (int at = 0; at < row.surfaces().size(); at++) {
      double left = x + (at % CELLS) * CELL;
      int line = at / CELLS;
      double top = y + 0.6 + line * 9.5;
      page.box(left, top, CELL - 0.8, 8.6, 0.25, Ink.BLACK);
      page.words(left + 0.8, top + 2.6, row.surfaces().get(at), 2.5, false);
    }
  }

  private void end() throws IOException {
    if (slip.rows().isEmpty()) {
      flow.paragraph("Nothing is on this slip.", TEXT, Ink.BLACK);
    }
    List<String> keep = slip.visit().doNotLose();
    flow.down(3);
    flow.heading("DO NOT LOSE: these go back to one place only", "");
    for (String words : keep.isEmpty() ? List.of("Nothing is marked.") : keep) {
      List<String> lines = flow.page().wrap(words, TEXT, true, Flow.WIDE - 5);
      flow.need(5 * lines.size());
      if (!keep.isEmpty()) {
        flow.page().box(Flow.LEFT, flow.y() + 0.4, 2.8, 2.8, 0.35, Ink.BLACK);
      }
      for (String line : lines) {
        flow.page().words(Flow.LEFT + 5, flow.y() + 3, line, TEXT, true);
        flow.down(5);
      }
    }
    flow.need(SIGNED);
    boxes("received by the shop: name, date, signature", "counted by: name, date, signature");
    flow.paragraph(BuildRecord.OUTRANKED, 2.6, Ink.DARK);
  }
}
