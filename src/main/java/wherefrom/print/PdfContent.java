package wherefrom.print;

import java.util.Arrays;
import java.util.zip.Deflater;

/** The drawing instructions of a page in the making (ISO 32000, content streams). */
final class PdfContent {
  /** Ten-thousandths of a point, each 0.035 micrometres on paper. */
  private static final int DECIMALS = 10_000;

  /** What is multiplied by up to 37 modules stays within a thousandth of a printer dot. */
  private static final int EXACT = 100_000;

  /** A fifth larger than with 3, and the sheets are made an eighth faster. */
  private static final int LEVEL = 2;

  private byte[] bytes = new byte[1 << 14];
  private int used;

  /** A number of a page's size, rounded to the decimals that matter. */
  PdfContent number(double value) {
    return number(value, DECIMALS);
  }

  /** A number that others are multiplied by, or that must hit a printer's dot. */
  PdfContent exact(double value) {
    return number(value, EXACT);
  }

  private PdfContent number(double value, int decimals) {
    int scaled = Math.toIntExact(Math.round(value * decimals));
    room(24);
    if (scaled < 0) {
      bytes[used++] = '-';
      scaled = -scaled;
    }
    digits(scaled / decimals, 1);
    int rest = scaled % decimals;
    if (rest > 0) {
      bytes[used++] = '.';
      digits(rest, decimals / 10);
      while (bytes[used - 1] == '0') {
        used--;
      }
    }
    bytes[used++] = ' ';
    return this;
  }

  PdfContent point(double x, double y) {
    return number(x).number(y);
  }

  /** A whole number from 0 to 99. */
  PdfContent small(int value) {
    room(3);
    if (value >= 10) {
      bytes[used++] = (byte) ('0' + value / 10);
    }
    bytes[used++] = (byte) ('0' + value % 10);
    bytes[used++] = ' ';
    return this;
  }

  /** An instruction or a name, in ASCII. */
  PdfContent word(String word) {
    room(word.length() + 1);
    for (int at = 0; at < word.length(); at++) {
      bytes[used++] = (byte) word.charAt(at);
    }
    bytes[used++] = ' ';
    return this;
  }

  /** A string of two-byte glyph numbers. */
  PdfContent glyphs(int[] glyphs) {
    room(4 * glyphs.length + 3);
    bytes[used++] = '(';
    for (int glyph : glyphs) {
      literal(glyph >> 8);
      literal(glyph & 0xFF);
    }
    bytes[used++] = ')';
    bytes[used++] = ' ';
    return this;
  }

  /** Brackets, backslashes and line ends mean something else in a string. */
  private void literal(int value) {
    if (value == '(' || value == ')' || value == '\\' || value == '\r') {
      bytes[used++] = '\\';
    }
    bytes[used++] = (byte) (value == '\r' ? 'r' : value);
  }

  /** All of it, deflated as the filter {@code FlateDecode} wants it. */
  byte[] deflated() {
    Deflater deflater = new Deflater(LEVEL);
    try {
      deflater.setInput(bytes, 0, used);
      deflater.finish();
      byte[] packed = new byte[used / 4 + 64];
      int length = 0;
      while (!deflater.finished()) {
        if (length == packed.length) {
          packed = Arrays.copyOf(packed, 2 * length);
        }
        length += deflater.deflate(packed, length, packed.length - length);
      }
      return Arrays.copyOf(packed, length);
    } finally {
      deflater.end();
    }
  }

  private void digits(int value, int least) {
    int unit = least;
    while (value / unit >= 10) {
      unit *= 10;
    }
    for (int rest = value; unit > 0; unit /= 10) {
      bytes[used++] = (byte) ('0' + rest / unit);
      rest %= unit;
    }
  }

  private void room(int more) {
    if (used + more > bytes.length) {
      bytes = Arrays.copyOf(bytes, 2 * bytes.length + more);
    }
  }
}
