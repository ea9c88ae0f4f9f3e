package wherefrom.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** One face of the print font in a document: widths and wrapping. */
final class PageLetters {
  /**
   * A space where a line may end: not between a figure and its unit, its sign or its currency, nor
   * in {@code 3 EX} or {@code R4 LO}.
   */
  private static final Pattern BETWEEN_WORDS =
      Pattern.compile(
          "(?<!±)(?<!\\d(?= (?:in|mm|cm|cm³|cc|ml|l|lb|lbf|kg|g|N|Nm|N·m|ft|psi|kPa|bar|deg|°|%|rpm"
              + "|[A-Z]{3}|IN|EX|UP|LO)(?![\\p{L}\\d]))) ");

  private final PDDocument document;
  private final Typeface face;
  private final PDFont font;
  private Optional<PDFont> spare = Optional.empty();

  private PageLetters(PDDocument document, Typeface face) throws IOException {
    this.document = document;
    this.face = face;
    this.font = PDType0Font.load(document, face.own().font(), true);
  }

  static PageLetters regular(PDDocument document) throws IOException {
    return new PageLetters(document, Typeface.regular());
  }

  static PageLetters bold(PDDocument document) throws IOException {
    return new PageLetters(document, Typeface.bold());
  }

  /** Letters of other scripts that the print font lacks; in the document when first written. */
  private PDFont spare() throws IOException {
    PDFont letters =
        spare.isPresent() ? spare.get() : PDType0Font.load(document, face.spare().font(), true);
    spare = Optional.of(letters);
    return letters;
  }

  /** Writes words where the pen is; they must be {@link #clean}. */
  void show(PDPageContentStream out, String clean, double size) throws IOException {
    for (Typeface.Run run : face.runs(clean)) {
      out.setFont(run.spare() ? spare() : font, (float) size);
      out.showText(run.text());
    }
  }

  /** The text with what the fonts lack replaced, on one line: see {@link Typeface#clean}. */
  String clean(String text) {
    return face.clean(text);
  }

  /** In points. */
  double width(String clean, double size) {
    return face.width(clean) * Typeface.CAP_HEIGHT * size;
  }

  /** The words, or as many as fit into a width with an ellipsis. */
  String shorten(String text, double size, double width) {
    return face.shorten(clean(text), width / (Typeface.CAP_HEIGHT * size));
  }

  /** The words of a text as {@link #clean}; a figure and its unit are one, as is a place's name. */
  List<String> words(String text) {
    return List.of(BETWEEN_WORDS.split(clean(text), -1));
  }

  /** Lines of at most this width; a word that is too long is broken. */
  List<String> wrap(String text, double size, double width) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : words(text)) {
      String more = line.isEmpty() ? word : line + " " + word;
      if (width(more, size) <= width) {
        line = more;
        continue;
      }
      if (!line.isEmpty()) {
        lines.add(line);
      }
      line = word;
      while (width(line, size) > width && line.length() > 1) {
        int end = fitting(line, size, width);
        lines.add(line.substring(0, end));
        line = line.substring(end);
      }
    }
    lines.add(line);
    return lines;
  }

  private int fitting(String word, double size, double width) {
    int end = 1;
    while (end + 1 < word.length() && width(word.substring(0, end + 1), size) <= width) {
      end++;
    }
    return end;
  }
}
