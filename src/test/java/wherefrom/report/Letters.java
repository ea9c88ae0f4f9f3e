package wherefrom.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** The letters of a page of a PDF, each with its place in points from the upper left corner. */
final class Letters {
  private Letters() {}

  /** In the order in which they were written, but for spaces between words. */
  static List<TextPosition> of(Path pdf, int page) throws IOException {
    List<TextPosition> letters = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDFTextStripper stripper =
          new PDFTextStripper() {
            @Override
            protected void writeString(String text, List<TextPosition> written) {
              letters.addAll(written);
            }
          };
      stripper.setStartPage(page);
      stripper.setEndPage(page);
      stripper.getText(document);
    }
    return letters;
  }
}
