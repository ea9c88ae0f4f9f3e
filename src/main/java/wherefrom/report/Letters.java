package wherefrom.report;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** One face of the print font in a document: widths and wrapping. */
final class Letters {
  private final PDFont font;

  private Letters(PDFont font) {
    this.font = font;
  }

  static Letters load(PDDocument document, String file) throws IOException {
    try (InputStream in = Letters.class.getResourceAsStream("/wherefrom/fonts/" + file)) {
      if (in == null) {
        throw new IOException("The print font " + file + " is missing from the program.");
      }
      return new Letters(PDType0Font.load(document, in, true));
    }
  }

  PDFont font() {
    return font;
  }

  /** The text with what the font lacks replaced by a question mark, on one line. */
  String clean(String text) {
    StringBuilder clean = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (Character.isISOControl(c) || Character.isSpaceChar(c)) {
                clean.append(' ');
              } else {
                String one = Character.toString(c);
                clean.append(has(one) ? one : "?");
              }
            });
    return clean.toString().strip();
  }

  private boolean has(String one) {
    try {
      return font.encode(one).length > 0;
    } catch (IllegalArgumentException | IOException e) {
      return false;
    }
  }

  /** In points. */
  double width(String clean, double size) throws IOException {
    return font.getStringWidth(clean) / 1000 * size;
  }

  /** Lines of at most this width; a word that is too long is broken. */
  List<String> wrap(String text, double size, double width) throws IOException {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : clean(text).split(" ", -1)) {
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

  private int fitting(String word, double size, double width) throws IOException {
    int end = 1;
    while (end + 1 < word.length() && width(word.substring(0, end + 1), size) <= width) {
      end++;
    }
    return end;
  }
}
