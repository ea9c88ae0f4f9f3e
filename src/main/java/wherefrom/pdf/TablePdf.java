package wherefrom.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import wherefrom.files.Outgoing;
import wherefrom.job.BuiltVersion;
import wherefrom.job.pages.RecordPicture;
import wherefrom.job.pages.RecordPlot;
import wherefrom.job.pages.RecordSection;

/**
 * Tables on A4 pages, wrapped and broken over pages with their heads repeated, and page numbers.
 * Sizes are in points.
 */
public final class TablePdf implements AutoCloseable {
  private static final double MARGIN = 32;
  private static final double SMALL = 8;
  private static final double LARGE = 10;
  private static final double HEAD = 11;
  private static final double TITLE = 16;
  private static final double LEADING = 1.25;
  private static final double GAP = 6;

  /** The most that a picture takes of the page's height. */
  private static final double PICTURE = 190;

  /** The height of a plot. */
  private static final double PLOT = 165;

  /** Room for the mark before rows that stand out. */
  private static final double MARK = 12;

  private final PDDocument document = new PDDocument();
  private final PageLetters regular;
  private final PageLetters bold;
  private final String title;
  private final double width = PDRectangle.A4.getWidth() - 2 * MARGIN;
  private Optional<PDPageContentStream> page = Optional.empty();
  private double text = SMALL;
  private double y;

  public TablePdf(String title) throws IOException {
    this.title = title;
    regular = PageLetters.regular(document);
    bold = PageLetters.bold(document);
    document.getDocumentInformation().setTitle(title);
    newPage();
    for (String line : bold.wrap(title, TITLE, width)) {
      line(bold, TITLE, MARGIN, line);
      y -= TITLE * LEADING;
    }
  }

  private void newPage() throws IOException {
    closePage();
    PDPage next = new PDPage(PDRectangle.A4);
    document.addPage(next);
    page = Optional.of(new PDPageContentStream(document, next));
    foot();
    y = PDRectangle.A4.getHeight() - MARGIN;
    line(regular, SMALL, MARGIN, "Page " + document.getNumberOfPages() + " · " + title);
    y -= 2 * TITLE;
  }

  /** In the margin: which version of the program wrote it. */
  private void foot() throws IOException {
    String version = BuiltVersion.words();
    y = MARGIN / 2;
    line(regular, SMALL, MARGIN + width - regular.width(version, SMALL), version);
  }

  private void closePage() throws IOException {
    if (page.isPresent()) {
      page.get().close();
    }
    page = Optional.empty();
  }

  private void need(double height) throws IOException {
    if (y - height < MARGIN) {
      newPage();
    }
  }

  /** A paragraph. */
  public void words(String words) throws IOException {
    for (String line : regular.wrap(words, SMALL + 1, width)) {
      need(SMALL * LEADING);
      line(regular, SMALL + 1, MARGIN, line);
      y -= (SMALL + 1) * LEADING;
    }
    y -= GAP;
  }

  /** A table in larger letters, for what is read first. */
  public void largeTable(RecordSection section) throws IOException {
    text = LARGE;
    table(section);
    text = SMALL;
  }

  /** A table; rows that stand out are in bold behind a black mark. */
  public void table(RecordSection section) throws IOException {
    need(6 * HEAD);
    y -= 2 * GAP;
    line(bold, HEAD, MARGIN, section.title());
    y -= HEAD * LEADING;
    if (section.rows().isEmpty()) {
      words(section.empty());
      return;
    }
    double[] columns = new ColumnWidths(regular, bold, text, GAP).of(section, width - MARK);
    head(section, columns);
    for (RecordSection.Row row : section.rows()) {
      PageLetters letters = row.open() ? bold : regular;
      List<List<String>> cells = wrapped(row.cells(), columns, letters);
      if (y - height(cells) < MARGIN) {
        newPage();
        head(section, columns);
      }
      row(cells, columns, letters, row.open());
    }
    y -= GAP;
  }

  private void head(RecordSection section, double[] columns) throws IOException {
    row(wrapped(section.columns(), columns, bold), columns, bold, false);
  }

  private List<List<String>> wrapped(List<String> cells, double[] columns, PageLetters letters) {
    List<List<String>> wrapped = new ArrayList<>();
    for (int at = 0; at < columns.length; at++) {
      wrapped.add(letters.wrap(cells.get(at), text, columns[at] - GAP));
    }
    return wrapped;
  }

  /** Of a row; one that is longer than any page is broken where the page ends. */
  private double height(List<List<String>> wrapped) {
    int most = wrapped.stream().mapToInt(List::size).max().orElse(1);
    return Math.min(most, 40) * text * LEADING;
  }

  private void row(List<List<String>> wrapped, double[] columns, PageLetters letters, boolean open)
      throws IOException {
    int most = wrapped.stream().mapToInt(List::size).max().orElse(1);
    if (open) {
      square();
    }
    for (int step = 0; step < most; step++) {
      need(text * LEADING);
      double x = MARGIN + MARK;
      for (int at = 0; at < columns.length; at++) {
        if (step < wrapped.get(at).size()) {
          line(letters, text, x, wrapped.get(at).get(step));
        }
        x += columns[at];
      }
      y -= text * LEADING;
    }
    rule();
  }

  private void square() throws IOException {
    PDPageContentStream out = page.orElseThrow();
    out.addRect((float) MARGIN, (float) y, (float) (text * 0.8), (float) (text * 0.8));
    out.fill();
  }

  /** A hair line under the row just written. */
  private void rule() throws IOException {
    PDPageContentStream out = page.orElseThrow();
    float at = (float) (y + text * 0.8);
    out.setLineWidth(0.3f);
    out.moveTo((float) MARGIN, at);
    out.lineTo((float) (MARGIN + width), at);
    out.stroke();
    y -= GAP / 3;
  }

  /**
   * Plots below each other, each with its title above and its words below.
   *
   * @param drawn is told how many are
   */
  public void plots(List<RecordPlot> plots, IntConsumer drawn) throws IOException {
    if (plots.isEmpty()) {
      return;
    }
    newPage();
    int done = 0;
    for (RecordPlot plot : plots) {
      need(PLOT + 5 * HEAD * LEADING);
      for (String title : bold.wrap(plot.title(), HEAD, width)) {
        line(bold, HEAD, MARGIN, title);
        y -= HEAD * LEADING;
      }
      new ChartDrawing(page.orElseThrow(), regular, MARGIN, y).draw(plot.chart(), width, PLOT);
      y -= PLOT + 3 * GAP;
      words(plot.sentence());
      y -= 2 * GAP;
      drawn.accept(++done);
    }
  }

  /**
   * Pictures with their words below, two beside each other.
   *
   * @param drawn is told how many are
   */
  public void pictures(List<RecordPicture> pictures, IntConsumer drawn) throws IOException {
    if (pictures.isEmpty()) {
      return;
    }
    newPage();
    line(bold, HEAD, MARGIN, "Pictures");
    y -= HEAD * LEADING;
    double wide = (width - 2 * GAP) / 2;
    for (int at = 0; at < pictures.size(); at += 2) {
      need(PICTURE + 4 * SMALL * LEADING);
      double left = picture(pictures.get(at), MARGIN, wide);
      double right =
          at + 1 < pictures.size()
              ? picture(pictures.get(at + 1), MARGIN + wide + 2 * GAP, wide)
              : y;
      y = Math.min(left, right) - 2 * GAP;
      drawn.accept(Math.min(at + 2, pictures.size()));
    }
  }

  /** Gives how far down it reaches. */
  private double picture(RecordPicture picture, double x, double wide) throws IOException {
    double down = y;
    Optional<PDImageXObject> image = Stills.read(document, picture);
    if (image.isPresent()) {
      double scale = Math.min(wide / image.get().getWidth(), PICTURE / image.get().getHeight());
      float across = (float) (image.get().getWidth() * scale);
      float high = (float) (image.get().getHeight() * scale);
      page.orElseThrow().drawImage(image.get(), (float) x, (float) (down - high), across, high);
      down -= high;
    }
    String missing = image.isPresent() ? "" : " (the picture file is missing or cannot be shown)";
    double top = y;
    y = down - SMALL * LEADING;
    for (String line : bold.wrap(picture.title(), SMALL, wide)) {
      line(bold, SMALL, x, line);
      y -= SMALL * LEADING;
    }
    for (String line : regular.wrap(picture.caption() + missing, SMALL, wide)) {
      line(regular, SMALL, x, line);
      y -= SMALL * LEADING;
    }
    double reached = y;
    y = top;
    return reached;
  }

  private void line(PageLetters letters, double size, double x, String text) throws IOException {
    PDPageContentStream out = page.orElseThrow();
    out.beginText();
    out.newLineAtOffset((float) x, (float) y);
    letters.show(out, letters.clean(text), size);
    out.endText();
  }

  public void save(Outgoing pdf) throws IOException {
    closePage();
    pdf.write(document::save);
  }

  @Override
  public void close() throws IOException {
    closePage();
    document.close();
  }
}
