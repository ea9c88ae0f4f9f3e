package wherefrom.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The letters of one font file. Not safe for use by several threads. */
final class Glyphs {
  private final TrueTypeFont font;
  private final CmapLookup characters;

  private Glyphs(TrueTypeFont font) throws IOException {
    this.font = font;
    this.characters = font.getUnicodeCmapLookup();
  }

  static Glyphs load(String file) {
    try (InputStream in = Glyphs.class.getResourceAsStream("/wherefrom/fonts/" + file)) {
      if (in == null) {
        throw new IllegalStateException("the print font is missing: " + file);
      }
      return new Glyphs(new TTFParser().parse(new RandomAccessReadBuffer(in)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  TrueTypeFont font() {
    return font;
  }

  boolean has(int character) {
    return characters.getGlyphId(character) != 0;
  }

  /** How wide a letter runs, as a part of the font's size. */
  double advance(int character) {
    try {
      int glyph = characters.getGlyphId(character);
      return font.getAdvanceWidth(glyph) / (double) font.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
