package wherefrom.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.Arrays;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * One face of the print font: how wide words run, and which characters it has. Not safe for use by
 * several threads.
 */
final class Typeface {
  /** Height of the capitals in parts of the font's size. */
  static final double CAP_HEIGHT = 0.75;

  private static final String TAILS = "gjpqy,;()[]{}|_@Q";
  private static final double ROUNDING = 1e-6;

  /** Characters below this are measured beforehand. */
  private static final int COMMON = 0x180;

  private static final int REPLACEMENT = '?';

  private final TrueTypeFont font;
  private final CmapLookup characters;
  private final double[] common = new double[COMMON];

  private Typeface(TrueTypeFont font) throws IOException {
    this.font = font;
    this.characters = font.getUnicodeCmapLookup();
    Arrays.setAll(common, this::advance);
  }

  static Typeface regular() {
    return load("B612-Regular.ttf");
  }

  static Typeface bold() {
    return load("B612-Bold.ttf");
  }

  private static Typeface load(String file) {
    try (InputStream in = Typeface.class.getResourceAsStream("/wherefrom/fonts/" + file)) {
      if (in == null) {
        throw new IllegalStateException("the print font is missing: " + file);
      }
      return new Typeface(new TTFParser().parse(new RandomAccessReadBuffer(in)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  TrueTypeFont font() {
    return font;
  }

  /** The width of words whose capitals are 1 mm high; the words must be {@link #clean}. */
  double width(String clean) {
    double width = 0;
    for (int at = 0; at < clean.length(); ) {
      int character = clean.codePointAt(at);
      width += character < COMMON ? common[character] : advance(character);
      at += Character.charCount(character);
    }
    return width / CAP_HEIGHT;
  }

  private double advance(int character) {
    try {
      int glyph = characters.getGlyphId(character);
      return font.getAdvanceWidth(glyph) / (double) font.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The words with what the font lacks replaced: spaces for control characters, the plain letter
   * for one with an unknown accent, a question mark for the rest.
   */
  String clean(String text) {
    if (isPlain(text)) {
      return text.strip();
    }
    StringBuilder clean = new StringBuilder();
    Normalizer.normalize(text, Normalizer.Form.NFC)
        .codePoints()
        .forEach(character -> append(clean, character));
    return clean.toString().strip();
  }

  private static boolean isPlain(String text) {
    for (int at = 0; at < text.length(); at++) {
      if (text.charAt(at) < ' ' || text.charAt(at) > '~') {
        return false;
      }
    }
    return true;
  }

  private void append(StringBuilder clean, int character) {
    if (Character.isISOControl(character) || Character.isSpaceChar(character)) {
      clean.append(' ');
    } else if (characters.getGlyphId(character) != 0) {
      clean.appendCodePoint(character);
    } else if (Character.getType(character) != Character.FORMAT) {
      String parts = Normalizer.normalize(Character.toString(character), Normalizer.Form.NFKD);
      int base = parts.codePointAt(0);
      clean.appendCodePoint(characters.getGlyphId(base) != 0 ? base : REPLACEMENT);
    }
  }

  /** The words, or as many as fit into a width with an ellipsis; capitals are 1 mm high. */
  String shorten(String clean, double width) {
    if (width(clean) <= width + ROUNDING) {
      return clean;
    }
    int end = clean.length();
    while (end > 0 && width(clean.substring(0, end).stripTrailing() + "…") > width) {
      end = clean.offsetByCodePoints(end, -1);
    }
    return clean.substring(0, end).stripTrailing() + "…";
  }

  static boolean hasTail(String text) {
    return text.chars().anyMatch(character -> TAILS.indexOf(character) >= 0 || character > 0x7F);
  }

  static boolean hasAccentedCapital(String text) {
    return text.codePoints().anyMatch(character -> character > 0x7F && character != '…');
  }
}
