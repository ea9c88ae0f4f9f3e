package wherefrom.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** One face of the print font in a document: widths and wrapping. */
final class Letters {
  /**
   * A space where a line may end: not between a figure and its unit, its sign or its currency, nor
   * in {@code 3 EX} or {@code R4 LO}.
   */
  private static final Pattern BETWEEN_WORDS =
      Pattern.compile(
          "(?<!±)(?<!\\d(?= (?:in|mm|cm|cm³|cc|ml|l|lb|lbf|kg|g|N|Nm|N·m|ft|psi|kPa|bar|deg|°|%|rpm"
              + "|[A-Z]{3}|IN|EX|UP|LO)(?![\\p{L}\\d]))) ");

  private final PDDocument document;
  private final PDFont font;
  private final String spareFile;
  private final Map<Integer, Boolean> known = new HashMap<>();
  private Optional<PDFont> spare = Optional.empty();

  private Letters(PDDocument document, String file, String spareFile) throws IOException {
    this.document = document;
    this.font = read(document, file);
    this.spareFile = spareFile;
  }

  static Letters regular(PDDocument document) throws IOException {
    return new Letters(document, "B612-Regular.ttf", "DejaVuSans.ttf");
  }

  static Letters bold(PDDocument document) throws IOException {
    return new Letters(document, "B612-Bold.ttf", "DejaVuSans-Bold.ttf");
  }

  private static PDFont read(PDDocument document, String file) throws IOException {
    try (InputStream in = Letters.class.getResourceAsStream("/wherefrom/fonts/" + file)) {
      if (in == null) {
        throw new IOException("The print font " + file + " is missing from the program.");
      }
      return PDType0Font.load(document, in, true);
    }
  }

  /** Letters of other scripts that the print font lacks; read when they are first wanted. */
  private PDFont spare() {
    try {
      PDFont letters = spare.isPresent() ? spare.get() : read(document, spareFile);
      spare = Optional.of(letters);
      return letters;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Words set from one font. */
  record Run(PDFont font, String text) {}

  /** The words cut where the font changes; they must be {@link #clean}. */
  List<Run> runs(String clean) {
    List<Run> runs = new ArrayList<>();
    int from = 0;
    for (int at = 0; at < clean.length(); ) {
      boolean own = isOwn(clean.codePointAt(at));
      int next = clean.offsetByCodePoints(at, 1);
      if (next == clean.length() || isOwn(clean.codePointAt(next)) != own) {
        runs.add(new Run(own ? font : spare(), clean.substring(from, next)));
        from = next;
      }
      at = next;
    }
    return runs;
  }

  /** Writes words where the pen is; they must be {@link #clean}. */
  void show(PDPageContentStream out, String clean, double size) throws IOException {
    for (Run run : runs(clean)) {
      out.setFont(run.font(), (float) size);
      out.showText(run.text());
    }
  }

  private boolean isOwn(int character) {
    return known.computeIfAbsent(character, one -> has(font, one));
  }

  /** The text with what the font lacks replaced by a question mark, on one line. */
  String clean(String text) {
    StringBuilder clean = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .forEach(character -> append(clean, character));
    return clean.toString().strip();
  }

  private void append(StringBuilder clean, int character) {
    if (Character.isISOControl(character) || Character.isSpaceChar(character)) {
      clean.append(' ');
    } else if (Character.getType(character) == Character.FORMAT) {
      return;
    } else if (canSet(character)) {
      clean.appendCodePoint(character);
    } else {
      String parts = Normalizer.normalize(Character.toString(character), Normalizer.Form.NFKD);
      clean.appendCodePoint(canSet(parts.codePointAt(0)) ? parts.codePointAt(0) : '?');
    }
  }

  private boolean canSet(int character) {
    return isOwn(character) || has(spare(), character);
  }

  private static boolean has(PDFont in, int character) {
    try {
      return in.encode(Character.toString(character)).length > 0;
    } catch (IllegalArgumentException | IOException e) {
      return false;
    }
  }

  /** In points. */
  double width(String clean, double size) throws IOException {
    double width = 0;
    for (Run run : runs(clean)) {
      width += run.font().getStringWidth(run.text()) / 1000 * size;
    }
    return width;
  }

  /** The words of a text as {@link #clean}; a figure and its unit are one, as is a place's name. */
  List<String> words(String text) {
    return List.of(BETWEEN_WORDS.split(clean(text), -1));
  }

  /** Lines of at most this width; a word that is too long is broken. */
  List<String> wrap(String text, double size, double width) throws IOException {
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

  private int fitting(String word, double size, double width) throws IOException {
    int end = 1;
    while (end + 1 < word.length() && width(word.substring(0, end + 1), size) <= width) {
      end++;
    }
    return end;
  }
}
