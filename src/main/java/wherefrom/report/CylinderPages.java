package wherefrom.report;

import java.io.IOException;
import java.util.List;
import wherefrom.drawing.Anchor;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.CylinderZoom;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.Sign;
import wherefrom.job.pages.CylinderSheet;
import wherefrom.job.pages.LimitBar;
import wherefrom.job.pages.RecordEngine;
import wherefrom.pdf.Book;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;
import wherefrom.pdf.PaperPage.Side;

/** A page for a cylinder, or more where much is known of it. */
final class CylinderPages {
  private static final double HEAD = 25;
  private static final double ZOOM = 68;
  private static final double NOTE = 6.2;

  private final Flow flow;
  private final RecordEngine engine;
  private final EngineArt art;

  CylinderPages(Flow flow, RecordEngine engine) {
    this.flow = flow;
    this.engine = engine;
    this.art = new EngineArt(engine);
  }

  void write(CylinderSheet sheet) throws IOException {
    flow.turn();
    String name = "Cylinder " + sheet.number();
    flow.about(name);
    flow.enter(name + ": " + sheet.where());
    head(sheet, name);
    zoom(sheet.number());
    LineColumns columns = new LineColumns(flow, 3);
    columns.draw(sheet.columns(), false);
    flow.down(1);
    sources(sheet);
    if (!sheet.events().isEmpty()) {
      flow.down(2);
      flow.need(24);
      flow.page().words(Flow.LEFT, flow.y() + 4, "What happened", 4.4, true);
      flow.down(7);
      new EventWire(flow).draw(sheet.events());
    }
    flow.down(1);
    new PictureRows(flow).draw(sheet.pictures());
    notes();
  }

  private void head(CylinderSheet sheet, String name) throws IOException {
    PaperPage page = flow.page();
    page.tag(Flow.LEFT, Flow.TOP, Flow.WIDE, HEAD, 7, 1.4);
    String number = "" + sheet.number();
    page.words(Flow.LEFT + 14, Flow.TOP + 18.6, number, 17, true);
    double x = Flow.LEFT + 18 + page.widthOf(number, 17, true);
    page.words(x, Flow.TOP + 11.6, name, 7.6, true);
    page.words(x, Flow.TOP + 18.4, sheet.where(), 3.8, false);
    art.small(page, sheet.number(), Flow.RIGHT - 60, Flow.TOP + 3, 54, HEAD - 6);
    flow.to(Flow.TOP + HEAD + 4);
  }

  private void zoom(int cylinder) throws IOException {
    double high = ZOOM - flow.shorter();
    Bounds room = PaperPage.room(Flow.LEFT, flow.y(), Flow.WIDE, high);
    Drawing drawing = CylinderZoom.of(engine.layout(), cylinder, room, art.asked(), Book.GLASS);
    flow.page().drawing(drawing, art.asked(), art.states(), false);
    for (Anchor anchor : drawing.anchors()) {
      for (Anchor.Held held : anchor.held()) {
        if (engine.renewed().contains(held.place())) {
          double x = PaperPage.mm(held.mark().x());
          Looks.mark(flow.page(), Sign.NEW, x, PaperPage.mm(held.mark().y()), 7);
        }
      }
    }
    flow.to(flow.y() + high + 3);
  }

  /** What the lines mean, and where their limits come from: each source once. */
  private void sources(CylinderSheet sheet) throws IOException {
    List<String> sources =
        sheet.columns().stream()
            .flatMap(column -> column.lines().stream())
            .flatMap(line -> line.bar().stream())
            .map(LimitBar::source)
            .distinct()
            .toList();
    if (!sources.isEmpty()) {
      flow.paragraph(
          "Thick line: two standard uncertainties either way. Gray: within the limit. Limits from: "
              + String.join("; ", sources)
              + ".",
          2.6,
          Ink.DARK);
    }
  }

  /** Lines to write on, where the page has room for some. */
  private void notes() throws IOException {
    if (flow.left() < 2 * NOTE + 4) {
      return;
    }
    PaperPage page = flow.page();
    page.words(Flow.LEFT, flow.y() + 3, "notes", 2.8, false, Side.BEGIN, Ink.DARK);
    for (double y = flow.y() + 3 + NOTE; y <= flow.foot(); y += NOTE) {
      page.line(Flow.LEFT, y, Flow.RIGHT, y, 0.14, Ink.GREY);
    }
    flow.to(flow.foot());
  }
}
