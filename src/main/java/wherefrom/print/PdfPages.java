package wherefrom.print;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;

/**
 * A PDF in the making: pages in true millimetres with the print font embedded. Readers are told to
 * print it at its own size.
 */
final class PdfPages implements AutoCloseable {
  private static final double PT_PER_MM = 72 / 25.4;

  private final PDDocument document = new PDDocument();
  private final LabelLetters letters = LabelLetters.load();
  private final PdfFonts fonts;
  private final PDResources resources = new PDResources();
  private int backgrounds;

  PdfPages(String title) throws IOException {
    fonts = new PdfFonts(document, letters);
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
  LabelLetters letters() {
    return letters;
  }

  /** What is printed; no page can be added any more. */
  PDDocument document() throws IOException {
    fonts.finish(resources);
    return document;
  }

  int count() {
    return document.getNumberOfPages();
  }

  /** What is drawn with its origin at a point of the page, in millimetres from its top left. */
  record Placed(List<PaperMark> marks, double right, double down) {
    Placed {
      marks = List.copyOf(marks);
    }
  }

  /** What is alike on several pages of a size: described once. */
  static final class Background {
    private final COSName name;

    private Background(COSName name) {
      this.name = name;
    }
  }

  Background background(Size size, List<PaperMark> marks) throws IOException {
    PdfBrush brush = new PdfBrush(heightPt(size), fonts);
    brush.draw(marks, 0, 0);
    PDFormXObject form = new PDFormXObject(stream(brush.content().deflated()));
    form.setBBox(paper(size));
    form.setResources(resources);
    backgrounds++;
    COSName name = COSName.getPDFName("B" + backgrounds);
    resources.put(name, form);
    return new Background(name);
  }

  /** Adds a page. */
  void add(Size size, List<Placed> content) throws IOException {
    add(size, new PdfBrush(heightPt(size), fonts), content);
  }

  /** Adds a page on a background of its size. */
  void add(Size size, Background background, List<Placed> content) throws IOException {
    PdfBrush brush = new PdfBrush(heightPt(size), fonts);
    brush.content().word("/" + background.name.getName()).word("Do");
    add(size, brush, content);
  }

  private void add(Size size, PdfBrush brush, List<Placed> content) throws IOException {
    for (Placed placed : content) {
      brush.draw(placed.marks(), placed.right(), placed.down());
    }
    PDPage page = new PDPage(paper(size));
    page.setResources(resources);
    page.setContents(stream(brush.content().deflated()));
    document.addPage(page);
  }

  private static double heightPt(Size size) {
    return size.height().millimetres() * PT_PER_MM;
  }

  private static PDRectangle paper(Size size) {
    float widthPt = (float) (size.width().millimetres() * PT_PER_MM);
    return new PDRectangle(widthPt, (float) heightPt(size));
  }

  private PDStream stream(byte[] deflated) throws IOException {
    PDStream stream = new PDStream(document);
    stream.getCOSObject().setItem(COSName.FILTER, COSName.FLATE_DECODE);
    try (OutputStream out = stream.getCOSObject().createRawOutputStream()) {
      out.write(deflated);
    }
    return stream;
  }

  void write(OutputStream out) throws IOException {
    document().save(out);
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
