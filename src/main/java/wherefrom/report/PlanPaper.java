package wherefrom.report;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.KindOutline;
import wherefrom.drawing.View;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.engine.Spots;
import wherefrom.files.Outgoing;
import wherefrom.job.PlaceState;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.RecordEngine;
import wherefrom.job.pages.ToFitSheet;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.pdf.Book;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;
import wherefrom.pdf.PaperPage.Side;

/** Plans to lay parts on: the engine as large as the sheet allows, and racks. */
final class PlanPaper {
  private static final double EDGE = 10;
  private static final double RULE = 100;
  private static final double GAP = 2;

  /** The least field that a part is laid into. */
  private static final double LEAST = 16;

  private final ToFitSheet plan;
  private final PaperSize size;
  private final Book book;

  private PlanPaper(ToFitSheet plan, PaperSize size, Book book) {
    this.plan = plan;
    this.size = size;
    this.book = book;
  }

  /** A sheet for each side of the engine, its places empty. */
  static void bench(ToFitSheet plan, PaperSize size, Outgoing pdf) throws IOException {
    try (Book book = new Book("Bench plan: " + plan.job())) {
      PlanPaper paper = new PlanPaper(plan, size, book);
      paper.side(View.ABOVE);
      paper.side(View.BELOW);
      Feet.write(book, plan.job());
      book.save(pdf);
    }
  }

  private void side(View view) throws IOException {
    PaperPage page = book.page(size, true);
    String side = view == View.ABOVE ? "top end" : "bottom end";
    String title = "Bench plan, " + side + ": " + plan.job();
    double room = page.width() - 2 * EDGE - RULE - 4;
    page.words(EDGE, EDGE + 5, page.shorten(title, 6, true, room), 6, true);
    rule(page);
    RecordEngine engine = plan.engine();
    RecordEngine empty = engine.showing(engine.states().keySet(), PlaceState.OUT);
    new EngineArt(empty)
        .plan(page, view, EDGE, EDGE + 12, page.width() - 2 * EDGE, page.height() - 44);
  }

  /** A line of 100 mm, to see whether the sheet was printed at its own size. */
  private static void rule(PaperPage page) throws IOException {
    double y = EDGE + 4;
    double right = page.width() - EDGE;
    page.line(right - RULE, y, right, y, 0.4, Ink.BLACK);
    for (int mark = 0; mark <= 10; mark++) {
      double x = right - RULE + mark * RULE / 10;
      page.line(x, y - (mark % 5 == 0 ? 2.4 : 1.4), x, y, 0.25, Ink.BLACK);
    }
    page.words(right, y + 4, "100 mm when printed at 100 %", 2.8, false, Side.END, Ink.DARK);
  }

  /** Fields for each kind that is tracked, in rows as the engine stands. */
  static void rack(ToFitSheet plan, PaperSize size, Outgoing pdf) throws IOException {
    try (Book book = new Book("Rack plan: " + plan.job())) {
      new PlanPaper(plan, size, book).racks();
      Feet.write(book, plan.job());
      book.save(pdf);
    }
  }

  private void racks() throws IOException {
    double y = Double.MAX_VALUE;
    PaperPage page = null;
    for (PartKind kind : plan.engine().kinds().stream().sorted().toList()) {
      List<Map.Entry<String, List<Place>>> rows = rows(kind);
      int most = rows.stream().mapToInt(row -> row.getValue().size()).max().orElse(0);
      if (most == 0) {
        continue;
      }
      double wide = (wideOf() - (most - 1) * GAP) / most;
      double high = Math.max(LEAST, Math.min(wide * 1.15, 30));
      double all = 9 + rows.size() * (high + 5);
      if (page == null || y + all > page.height() - EDGE - 6) {
        page = book.page(size, true);
        rackTitle(page);
        y = EDGE + 10;
      }
      rack(page, kind, rows, y, wide, high);
      y += all;
    }
  }

  private void rackTitle(PaperPage page) throws IOException {
    String front = "the front is left";
    double room = wideOf() - page.widthOf(front, 3.4, false) - 4;
    String title = page.shorten("Rack plan: " + plan.job(), 6, true, room);
    page.words(EDGE, EDGE + 5, title, 6, true);
    page.words(page.width() - EDGE, EDGE + 5, front, 3.4, false, Side.END, Ink.DARK);
  }

  private double wideOf() {
    return size.height() - 2 * EDGE;
  }

  private void rack(
      PaperPage page,
      PartKind kind,
      List<Map.Entry<String, List<Place>>> rows,
      double top,
      double wide,
      double high)
      throws IOException {
    page.words(EDGE, top + 5, kind.plural(), 4.6, true);
    double y = top + 7;
    for (Map.Entry<String, List<Place>> row : rows) {
      page.words(EDGE, y + 3.4, row.getKey(), 2.8, false, Side.BEGIN, Ink.DARK);
      for (int at = 0; at < row.getValue().size(); at++) {
        field(page, row.getValue().get(at), EDGE + at * (wide + GAP), y + 4.4, wide, high);
      }
      y += high + 5;
    }
  }

  /** A field with the part's outline, thin, and its place. */
  private void field(PaperPage page, Place place, double x, double y, double wide, double high)
      throws IOException {
    page.box(x, y, wide, high, 0.3, Ink.BLACK);
    double side = Math.min(wide, high - 6) - 2;
    Bounds square = PaperPage.room(x + (wide - side) / 2, y + 6, side, side);
    page.shapes(
        KindOutline.of(place.kind(), plan.engine().layout(), square, Book.GLASS), DrawnAs.FAINT);
    page.words(
        x + wide / 2,
        y + 4.6,
        place.figures(),
        fitting(page, place, wide),
        true,
        Side.MIDDLE,
        Ink.BLACK);
  }

  private static double fitting(PaperPage page, Place place, double wide) {
    double runs = page.widthOf(place.figures(), 4.6, true);
    return Math.min(4.6, 4.6 * (wide - 1.5) / runs);
  }

  /** The places of a kind as they stand: a row a bank, or a row a half. */
  private List<Map.Entry<String, List<Place>>> rows(PartKind kind) {
    Layout layout = plan.engine().layout();
    Stream<Map.Entry<String, List<Place>>> rows =
        switch (kind.home()) {
          case VALVE ->
              layout.banks().stream()
                  .map(
                      bank ->
                          Map.entry(named(bank), of(kind, layout.valvesInOrder(bank).stream())));
          case BORE, ROD ->
              layout.banks().stream().map(bank -> Map.entry(named(bank), bank(kind, bank)));
          case MAIN -> Stream.of(Map.entry("mains", of(kind, Spots.mains(layout).stream())));
          case CAM_BEARING ->
              Stream.of(Map.entry("cam", of(kind, Spots.camBearings(layout).stream())));
        };
    return rows.filter(row -> !row.getValue().isEmpty()).toList();
  }

  private String named(Bank bank) {
    return plan.engine().layout().banks().size() > 1 ? bank.name() + " bank" : "";
  }

  private List<Place> bank(PartKind kind, Bank bank) {
    return bank.cylinders().stream()
        .flatMap(
            cylinder ->
                Stream.concat(
                        Spots.bores(plan.engine().layout()).stream()
                            .filter(bore -> bore.cylinder() == cylinder),
                        Spots.rods(plan.engine().layout()).stream()
                            .filter(rod -> rod.cylinder() == cylinder))
                    .filter(spot -> Place.canLive(kind, spot))
                    .map(spot -> new Place(kind, spot)))
        .collect(Collectors.toList());
  }

  private static List<Place> of(PartKind kind, Stream<? extends wherefrom.engine.Spot> spots) {
    return spots
        .filter(spot -> Place.canLive(kind, spot))
        .map(spot -> new Place(kind, spot))
        .toList();
  }
}
