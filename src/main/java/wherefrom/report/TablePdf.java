package wherefrom.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import wherefrom.job.RecordSection;

/** Tables on A4 pages, wrapped and broken over pages, with page numbers. Sizes are in points. */
final class TablePdf implements AutoCloseable {
  private static final double MARGIN = 40;
  private static final double TEXT = 8;
  private static final double HEAD = 11;
  private static final double TITLE = 16;
  private static final double LEADING = 1.35;
  private static final double GAP = 6;

  /** Room for the mark before rows that stand out. */
  private static final double MARK = 12;

  private final PDDocument document = new PDDocument();
  private final Letters regular;
  private final Letters bold;
  private final String title;
  private final double width = PDRectangle.A4.getWidth() - 2 * MARGIN;
  private Optional<PDPageContentStream> page = Optional.empty();
  private double y;

  TablePdf(String title) throws IOException {
    this.title = title;
    regular = Letters.load(document, "B612-Regular.ttf");
    bold = Letters.load(document, "B612-Bold.ttf");
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
    y = PDRectangle.A4.getHeight() - MARGIN;
    line(regular, TEXT, MARGIN, "Page " + document.getNumberOfPages() + " · " + title);
    y -= 2 * TITLE;
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
  void words(String text) throws IOException {
    for (String line : regular.wrap(text, TEXT + 1, width)) {
      need(TEXT * LEADING);
      line(regular, TEXT + 1, MARGIN, line);
      y -= (TEXT + 1) * LEADING;
    }
    y -= GAP;
  }

  /** A table; rows that stand out are in bold behind a black mark. */
  void table(RecordSection section) throws IOException {
    need(4 * HEAD);
    y -= GAP;
    line(bold, HEAD, MARGIN, section.title());
    y -= HEAD * LEADING;
    if (section.rows().isEmpty()) {
      words(section.empty());
      return;
    }
    double[] columns = columns(section);
    row(section.columns(), columns, bold, false);
    rule();
    for (RecordSection.Row row : section.rows()) {
      row(row.cells(), columns, row.open() ? bold : regular, row.open());
    }
    y -= GAP;
  }

  /** Widths by the longest words, none under a twelfth of the page. */
  private double[] columns(RecordSection section) throws IOException {
    int count = section.columns().size();
    double[] wanted = new double[count];
    double sum = 0;
    for (int at = 0; at < count; at++) {
      wanted[at] = regular.width(regular.clean(section.columns().get(at)), TEXT) + GAP;
      for (RecordSection.Row row : section.rows()) {
        double cell = regular.width(regular.clean(row.cells().get(at)), TEXT);
        wanted[at] = Math.max(wanted[at], Math.min(cell + GAP, width / 3));
      }
      wanted[at] = Math.max(wanted[at], width / 12);
      sum += wanted[at];
    }
    for (int at = 0; at < count; at++) {
      wanted[at] *= (width - MARK) / sum;
    }
    return wanted;
  }

  private void row(List<String> cells, double[] columns, Letters letters, boolean open)
      throws IOException {
    List<List<String>> wrapped = new ArrayList<>();
    int most = 1;
    for (int at = 0; at < columns.length; at++) {
      wrapped.add(letters.wrap(cells.get(at), TEXT, columns[at] - GAP));
      most = Math.max(most, wrapped.get(at).size());
    }
    need(Math.min(most, 40) * TEXT * LEADING);
    if (open) {
      square();
    }
    for (int step = 0; step < most; step++) {
      need(TEXT * LEADING);
      double x = MARGIN + MARK;
      for (int at = 0; at < columns.length; at++) {
        if (step < wrapped.get(at).size()) {
          line(letters, TEXT, x, wrapped.get(at).get(step));
        }
        x += columns[at];
      }
      y -= TEXT * LEADING;
    }
  }

  private void square() throws IOException {
    PDPageContentStream out = page.orElseThrow();
    out.addRect((float) MARGIN, (float) y, (float) (TEXT * 0.8), (float) (TEXT * 0.8));
    out.fill();
  }

  private void rule() throws IOException {
    PDPageContentStream out = page.orElseThrow();
    float at = (float) (y + TEXT * 0.9);
    out.moveTo((float) MARGIN, at);
    out.lineTo((float) (MARGIN + width), at);
    out.stroke();
    y -= GAP / 2;
  }

  private void line(Letters letters, double size, double x, String text) throws IOException {
    PDPageContentStream out = page.orElseThrow();
    out.beginText();
    out.setFont(letters.font(), (float) size);
    out.newLineAtOffset((float) x, (float) y);
    out.showText(letters.clean(text));
    out.endText();
  }

  void save(Path pdf) throws IOException {
    closePage();
    document.save(pdf.toFile());
  }

  @Override
  public void close() throws IOException {
    closePage();
    document.close();
  }
}
