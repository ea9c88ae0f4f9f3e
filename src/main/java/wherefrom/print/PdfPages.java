package wherefrom.print;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;

/**
 * A PDF in the making: pages in true millimetres with the print font embedded. Readers are told to
 * print it at its own size.
 */
final class PdfPages implements AutoCloseable {
  private static final double PT_PER_MM = 72 / 25.4;

  private final PDDocument document = new PDDocument();
  private final Letters letters = Letters.load();
  private final PDFont regular;
  private final PDFont bold;

  PdfPages(String title) throws IOException {
    regular = PDType0Font.load(document, letters.regular().font(), true);
    bold = PDType0Font.load(document, letters.bold().font(), true);
    PDDocumentInformation about = new PDDocumentInformation();
    about.setTitle(title);
    about.setCreator("Wherefrom");
    document.setDocumentInformation(about);
    document.getDocumentCatalog().setLanguage("en");
    PDViewerPreferences view = new PDViewerPreferences(new COSDictionary());
    view.setPrintScaling(PRINT_SCALING.None);
    document.getDocumentCatalog().setViewerPreferences(view);
  }

  /** The print font's measures, for setting words before they are drawn. */
  Letters letters() {
    return letters;
  }

  PDDocument document() {
    return document;
  }

  int count() {
    return document.getNumberOfPages();
  }

  /** What is drawn with its origin at a point of the page, in millimetres from its top left. */
  record Placed(List<Mark> marks, double right, double down) {
    Placed {
      marks = List.copyOf(marks);
    }
  }

  /** Adds a page. */
  void add(Size size, List<Placed> content) throws IOException {
    double heightPt = size.height().millimetres() * PT_PER_MM;
    float widthPt = (float) (size.width().millimetres() * PT_PER_MM);
    PDPage page = new PDPage(new PDRectangle(widthPt, (float) heightPt));
    document.addPage(page);
    try (PdfBrush brush =
        new PdfBrush(new PDPageContentStream(document, page), heightPt, regular, bold)) {
      for (Placed placed : content) {
        brush.draw(placed.marks(), placed.right(), placed.down());
      }
    }
  }

  void write(OutputStream out) throws IOException {
    document.save(out);
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
