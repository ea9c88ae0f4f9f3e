package wherefrom.pdf;

import java.io.IOException;
import java.util.Arrays;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A face of the print font in a PDF; only the glyphs that are used are embedded. */
public final class PdfFont {
  private final PDType0Font font;
  private final String name;
  private static final int UNKNOWN = 0;

  /** By character: the glyphs met so far. */
  private int[] glyphs = new int[0x180];

  private boolean used;

  /**
   * @param name what pages call it
   */
  public PdfFont(PDDocument document, Glyphs face, String name) throws IOException {
    this.name = name;
    font = PDType0Font.load(document, face.font(), true);
  }

  /** As it is written on a page. */
  public String name() {
    return "/" + name;
  }

  /** Keeps the glyphs that were used; nothing can be added any more. */
  public void finish(PDResources resources) throws IOException {
    if (used && font.willBeSubset()) {
      font.subset();
      resources.put(COSName.getPDFName(name), font);
    }
  }

  /** The glyphs of words that are {@link Typeface#clean}. */
  public int[] glyphs(String clean) throws IOException {
    int[] found = new int[clean.codePointCount(0, clean.length())];
    int next = 0;
    for (int at = 0; at < clean.length(); next++) {
      int character = clean.codePointAt(at);
      found[next] = glyph(character);
      at += Character.charCount(character);
    }
    return found;
  }

  private int glyph(int character) throws IOException {
    if (character >= glyphs.length) {
      glyphs = Arrays.copyOf(glyphs, 2 * character);
    }
    if (glyphs[character] == UNKNOWN) {
      byte[] code = font.encode(Character.toString(character));
      glyphs[character] = ((code[0] & 0xFF) << 8) | (code[1] & 0xFF);
      font.addToSubset(character);
      used = true;
    }
    return glyphs[character];
  }
}
