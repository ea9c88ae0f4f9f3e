package wherefrom.print;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import wherefrom.pdf.PdfFont;
import wherefrom.pdf.Typeface;

/** Both faces of the print font in a PDF, and the letters of other scripts where they are used. */
final class PdfFonts {
  private final PDDocument document;
  private final LabelLetters letters;
  private final PdfFont regular;
  private final PdfFont bold;
  private Optional<PdfFont> spareRegular = Optional.empty();
  private Optional<PdfFont> spareBold = Optional.empty();

  /** Words of one font. */
  record Piece(PdfFont font, String text) {}

  PdfFonts(PDDocument document, LabelLetters letters) throws IOException {
    this.document = document;
    this.letters = letters;
    regular = new PdfFont(document, letters.regular().own(), "F1");
    bold = new PdfFont(document, letters.bold().own(), "F2");
  }

  /** Words that are {@link Typeface#clean}, cut where the font changes. */
  List<Piece> pieces(String clean, boolean isBold) throws IOException {
    List<Piece> pieces = new ArrayList<>();
    for (Typeface.Run run : letters.face(isBold).runs(clean)) {
      PdfFont font = run.spare() ? spare(isBold) : isBold ? bold : regular;
      pieces.add(new Piece(font, run.text()));
    }
    return pieces;
  }

  private PdfFont spare(boolean isBold) throws IOException {
    Optional<PdfFont> there = isBold ? spareBold : spareRegular;
    if (there.isPresent()) {
      return there.get();
    }
    PdfFont made = new PdfFont(document, letters.face(isBold).spare(), isBold ? "F4" : "F3");
    if (isBold) {
      spareBold = Optional.of(made);
    } else {
      spareRegular = Optional.of(made);
    }
    return made;
  }

  /** Once all pages are drawn: gives them the faces and the glyphs that were used and no others. */
  void finish(PDResources resources) throws IOException {
    regular.finish(resources);
    bold.finish(resources);
    if (spareRegular.isPresent()) {
      spareRegular.get().finish(resources);
    }
    if (spareBold.isPresent()) {
      spareBold.get().finish(resources);
    }
  }
}
