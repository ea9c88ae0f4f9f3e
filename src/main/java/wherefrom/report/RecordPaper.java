package wherefrom.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.files.Outgoing;
import wherefrom.files.Progress;
import wherefrom.job.BuiltVersion;
import wherefrom.job.pages.CylinderSheet;
import wherefrom.job.pages.PaperSize;
import wherefrom.job.pages.RecordPicture;
import wherefrom.job.pages.RecordSection;
import wherefrom.job.pages.RecordSheets;
import wherefrom.job.pages.RecordTable;
import wherefrom.job.record.BuildRecord;
import wherefrom.pdf.Book;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;
import wherefrom.pdf.PaperPage.Side;

/** The build record for the binder, page by page. */
final class RecordPaper implements AutoCloseable {

  /** A piece of the record; the work can be stopped between two. */
  @FunctionalInterface
  private interface Piece {
    void write() throws IOException;
  }

  /** What stands with its cylinder or its main, and on the first page. */
  private static final Set<RecordTable> SAID_ELSEWHERE =
      EnumSet.of(
          RecordTable.IN_SHORT,
          RecordTable.NOT_CHECKED,
          RecordTable.PARTS,
          RecordTable.MEASURED,
          RecordTable.SEEN,
          RecordTable.PHOTOGRAPHS,
          RecordTable.PLOTS);

  private final BuildRecord record;
  private final Book book;
  private final Flow flow;
  private final OpenList open;
  private final SetPages plots;
  private double contentsAt;

  RecordPaper(BuildRecord record, PaperSize paper) throws IOException {
    this.record = record;
    this.book = new Book("Build record: " + record.job());
    this.flow = new Flow(book, paper);
    this.plots = new SetPages(flow, record.plots());
    this.open = new OpenList(record.find(RecordTable.NOT_CHECKED));
  }

  void write(Outgoing pdf) throws IOException {
    List<Piece> pieces = pieces();
    for (int at = 0; at < pieces.size(); at++) {
      pieces.get(at).write();
      Progress.step(at + 1, pieces.size());
    }
    finish();
    book.save(pdf);
  }

  private List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(() -> new CoverPage(flow, record, open).write());
    pieces.add(this::second);
    Optional<RecordSheets> sheets = record.sheets();
    if (sheets.isPresent()) {
      CylinderPages cylinders = new CylinderPages(flow, sheets.get().engine());
      for (CylinderSheet sheet : sheets.get().cylinders()) {
        pieces.add(() -> cylinders.write(sheet));
      }
      pieces.add(() -> new MainsPages(flow, sheets.get()).write());
      pieces.add(() -> plots.write(sheets.get().sets()));
      pieces.add(plots::clearances);
    }
    bags().ifPresent(section -> pieces.add(() -> bags(section)));
    pieces.add(() -> flow.begin("Work, money and figures", ""));
    pieces.add(() -> flow.enter("Work, money and figures"));
    for (RecordSection section : JoinedTables.of(ownTables())) {
      pieces.add(() -> new TablePages(flow).table(section));
    }
    pieces.add(plots::rest);
    pieces.add(this::otherPictures);
    return pieces;
  }

  /** Empty where no bag and no big part is kept. */
  private Optional<RecordSection> bags() {
    return Optional.of(record.find(RecordTable.BAGS)).filter(one -> !one.rows().isEmpty());
  }

  /** On a page of its own, to be taken to the bench as the engine goes together. */
  private void bags(RecordSection section) throws IOException {
    flow.begin(section.title(), "");
    flow.enter(section.title());
    new TablePages(flow).rows(section);
  }

  /** Those that no sheet holds. */
  private void otherPictures() throws IOException {
    List<RecordPicture> left = new ArrayList<>(record.pictures());
    record.sheets().ifPresent(sheets -> left.removeAll(sheets.allPictures()));
    if (!left.isEmpty()) {
      flow.begin("Photographs", "");
      flow.enter("Photographs");
      new PictureRows(flow).draw(left);
    }
  }

  private List<RecordSection> ownTables() {
    return record.sections().stream().filter(section -> !isSaidElsewhere(section)).toList();
  }

  private boolean isSaidElsewhere(RecordSection section) {
    return (record.sheets().isPresent() && SAID_ELSEWHERE.contains(section.table()))
        || section.table() == RecordTable.NOT_CHECKED
        || (section.table() == RecordTable.BAGS && bags().isPresent());
  }

  /** Page 2: fields, contents, and what of the open points the cover had no room for. */
  private void second() throws IOException {
    flow.begin("Contents", record.job());
    flow.enter("Contents, fields, open points");
    ContentsPage.fields(flow);
    contentsAt = flow.y();
    int cylinders = record.sheets().map(sheets -> sheets.cylinders().size()).orElse(0);
    int others = bags().isPresent() ? 7 : 6;
    flow.down(ContentsPage.height(flow, cylinders + others));
    if (!open.isDone()) {
      open.heading(flow);
      open.rest(flow);
    }
  }

  private void finish() throws IOException {
    List<PaperPage> pages = book.pages();
    ContentsPage.contents(flow, pages.get(1), contentsAt);
    book.outline(flow.contents());
    for (int at = 0; at < pages.size(); at++) {
      foot(pages.get(at), at + 1, pages.size());
    }
  }

  private void foot(PaperPage page, int number, int of) throws IOException {
    String program = " · " + BuiltVersion.words();
    double room = Flow.WIDE - page.widthOf(program, 2.4, false);
    String words = page.shorten(record.job(), 2.4, false, room) + program;
    page.words(Flow.LEFT, flow.foot() + 5, words, 2.4, false, Side.BEGIN, Ink.DARK);
    page.words(Flow.LEFT, flow.foot() + 9, BuildRecord.OUTRANKED, 2.4, false, Side.BEGIN, Ink.DARK);
    page.words(Flow.RIGHT, flow.foot() + 9, number + " / " + of, 3.2, true, Side.END, Ink.BLACK);
  }

  @Override
  public void close() throws IOException {
    book.close();
  }
}
