package wherefrom.report;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.Sign;
import wherefrom.job.pages.RecordEngine;
import wherefrom.job.pages.RecordGrid;
import wherefrom.job.pages.RecordSheets;
import wherefrom.pdf.Book;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;
import wherefrom.pdf.PaperPage.Side;

/** The mains beside each other, and what belongs to no cylinder: heads, block, shafts. */
final class MainsPages {
  private static final double NAMES = 52;
  private static final double HIGH = 58;
  private static final double LINE = 4.4;

  private final Flow flow;
  private final RecordSheets sheets;
  private final RecordEngine engine;
  private final EngineArt art;

  MainsPages(Flow flow, RecordSheets sheets) {
    this.flow = flow;
    this.sheets = sheets;
    this.engine = sheets.engine();
    this.art = new EngineArt(engine);
  }

  void write() throws IOException {
    flow.begin("Mains, crank and castings", "the front is left");
    flow.enter("Mains, crank and castings");
    drawing();
    RecordGrid grid = sheets.mains();
    for (RecordGrid.Row row : grid.rows()) {
      row(row, grid.columns().size());
    }
    sources(grid);
    flow.down(5);
    if (!sheets.others().isEmpty()) {
      new LineColumns(flow, 3).draw(sheets.others(), true);
      flow.down(4);
    }
    if (!sheets.events().isEmpty()) {
      flow.need(30);
      flow.page().words(Flow.LEFT, flow.y() + 4, "What happened", 4.4, true);
      flow.down(7);
      new EventWire(flow).draw(sheets.events());
    }
    new PictureRows(flow).draw(sheets.pictures());
  }

  private double wide(int columns) {
    return (Flow.WIDE - NAMES) / columns;
  }

  private void drawing() throws IOException {
    int mains = engine.layout().mains();
    double high = HIGH - flow.shorter() / 3;
    Drawing drawing =
        wherefrom.drawing.MainsPage.of(
            engine.layout(),
            1,
            mains,
            PaperPage.room(Flow.LEFT + NAMES, flow.y(), Flow.WIDE - NAMES, high),
            art.asked(),
            Book.GLASS);
    flow.page().drawing(drawing, art.asked(), art.states(), false);
    flow.down(high + 4);
  }

  private void row(RecordGrid.Row row, int columns) throws IOException {
    List<String> limit =
        row.limit().isEmpty() ? List.of() : flow.page().wrap(row.limit(), 2.5, false, NAMES - 2);
    flow.need((1 + limit.size()) * LINE);
    PaperPage page = flow.page();
    double y = flow.y();
    page.words(Flow.LEFT, y + 3, page.shorten(row.name(), 2.9, false, NAMES - 2), 2.9, false);
    for (int at = 0; at < limit.size(); at++) {
      page.words(Flow.LEFT, y + 6.4 + at * 3.4, limit.get(at), 2.5, false, Side.BEGIN, Ink.DARK);
    }
    int lines = 1;
    for (int at = 0; at < columns; at++) {
      double x = Flow.LEFT + NAMES + at * wide(columns);
      lines = Math.max(lines, cell(row.cells().get(at), x, y, wide(columns)));
    }
    flow.down(LINE + 3.4 * Math.max(limit.size(), lines - 1) + 0.6);
    page.line(Flow.LEFT, flow.y() - 0.4, Flow.RIGHT, flow.y() - 0.4, 0.14, Ink.GREY);
  }

  /** Writes a cell; gives how many lines it takes. */
  private int cell(RecordGrid.Cell cell, double x, double y, double wide) throws IOException {
    PaperPage page = flow.page();
    Optional<Sign> sign = Looks.sign(cell.look());
    double mark = sign.isPresent() ? 3.6 : 0;
    double size = fitting(cell.text(), wide - mark - 1);
    List<String> lines = page.wrap(cell.text(), size, true, wide - mark - 1);
    double runs = 0;
    for (String line : lines) {
      runs = Math.max(runs, page.widthOf(line, size, true));
    }
    double from = x + (wide - runs - mark) / 2;
    if (sign.isPresent()) {
      Looks.mark(page, sign.get(), from + 1.5, y + 1.9, 3);
    }
    for (int at = 0; at < lines.size(); at++) {
      page.words(from + mark, y + 3 + at * 3.4, lines.get(at), size, true);
    }
    return lines.size();
  }

  private double fitting(String text, double wide) {
    double runs = flow.page().widthOf(text, 2.9, true);
    return runs <= wide ? 2.9 : Math.max(2.5, 2.9 * wide / runs);
  }

  private void sources(RecordGrid grid) throws IOException {
    List<String> sources =
        grid.rows().stream()
            .map(RecordGrid.Row::source)
            .filter(s -> !s.isEmpty())
            .distinct()
            .toList();
    if (!sources.isEmpty()) {
      flow.down(1);
      flow.paragraph("Limits from: " + String.join("; ", sources) + ".", 2.6, Ink.DARK);
    }
  }
}
