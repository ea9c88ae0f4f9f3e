package wherefrom.print;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.BitSet;
import wherefrom.parts.LabelFrame;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagSymbol;

/**
 * The dark modules of a symbol with its frame, {@link LabelFrame#WIDTH} each way; the outermost are
 * the white margin.
 */
final class Modules {
  static final int WIDTH = LabelFrame.WIDTH;

  private final BitSet dark = new BitSet(WIDTH * WIDTH);

  private Modules(Symbol symbol) {
    for (int row = 0; row < WIDTH; row++) {
      for (int column = 0; column < WIDTH; column++) {
        dark.set(
            row * WIDTH + column,
            LabelFrame.isFrame(row, column)
                || (isSymbol(row)
                    && isSymbol(column)
                    && symbol.dark(row - LabelFrame.INSET, column - LabelFrame.INSET)));
      }
    }
  }

  private interface Symbol {
    boolean dark(int row, int column);
  }

  private static boolean isSymbol(int module) {
    return module >= LabelFrame.INSET && module < LabelFrame.INSET + TagSymbol.SIZE;
  }

  /** The symbol of a tag. */
  static Modules of(TagCode code) {
    TagSymbol symbol = TagSymbol.of(code);
    return new Modules(symbol::dark);
  }

  /**
   * The symbol of digits that are no tag: also version 1, error correction H, numeric.
   *
   * @param digits at most 17 decimal digits
   */
  static Modules ofDigits(String digits) {
    try {
      ByteMatrix matrix = Encoder.encode(digits, ErrorCorrectionLevel.H).getMatrix();
      if (matrix.getWidth() != TagSymbol.SIZE) {
        throw new IllegalArgumentException("too long for version 1: " + digits);
      }
      return new Modules((row, column) -> matrix.get(column, row) == 1);
    } catch (WriterException e) {
      throw new IllegalArgumentException(digits, e);
    }
  }

  /** Whether a module is dark; outside it is light. */
  boolean dark(int row, int column) {
    return row >= 0
        && column >= 0
        && row < WIDTH
        && column < WIDTH
        && dark.get(row * WIDTH + column);
  }
}
