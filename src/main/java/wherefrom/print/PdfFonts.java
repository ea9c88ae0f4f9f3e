package wherefrom.print;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;

/** Both faces of the print font in a PDF. */
final class PdfFonts {
  private final PdfFont regular;
  private final PdfFont bold;

  PdfFonts(PDDocument document, Letters letters) throws IOException {
    regular = new PdfFont(document, letters.regular(), "F1");
    bold = new PdfFont(document, letters.bold(), "F2");
  }

  PdfFont face(boolean isBold) {
    return isBold ? bold : regular;
  }

  /** Once all pages are drawn: gives them the faces and the glyphs that were used and no others. */
  void finish(PDResources resources) throws IOException {
    regular.finish(resources);
    bold.finish(resources);
  }
}
