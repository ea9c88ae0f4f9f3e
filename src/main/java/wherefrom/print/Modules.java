package wherefrom.print;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.function.IntUnaryOperator;
import wherefrom.parts.LabelFrame;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagSymbol;

/**
 * The dark modules of a symbol with its frame, {@link LabelFrame#WIDTH} each way; the outermost are
 * the white margin.
 */
final class Modules {
  static final int WIDTH = LabelFrame.WIDTH;

  private static final long[] FRAME = frame();

  /** One number a row; the lowest bit is the leftmost module. */
  private final long[] rows = FRAME.clone();

  private Modules(IntUnaryOperator symbol) {
    for (int row = 0; row < TagSymbol.SIZE; row++) {
      rows[row + LabelFrame.INSET] |= (long) symbol.applyAsInt(row) << LabelFrame.INSET;
    }
  }

  private static long[] frame() {
    long[] frame = new long[WIDTH];
    for (int module = 0; module < WIDTH * WIDTH; module++) {
      if (LabelFrame.isFrame(module / WIDTH, module % WIDTH)) {
        frame[module / WIDTH] |= 1L << module % WIDTH;
      }
    }
    return frame;
  }

  /** The symbol of a tag. */
  static Modules of(TagCode code) {
    TagSymbol symbol = TagSymbol.of(code);
    return new Modules(symbol::row);
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
      return new Modules(row -> row(matrix, row));
    } catch (WriterException e) {
      throw new IllegalArgumentException(digits, e);
    }
  }

  private static int row(ByteMatrix matrix, int row) {
    int dark = 0;
    for (int column = 0; column < TagSymbol.SIZE; column++) {
      dark |= matrix.get(column, row) << column;
    }
    return dark;
  }

  /** Whether a module is dark; outside it is light. */
  boolean dark(int row, int column) {
    return column >= 0 && column < WIDTH && (row(row) >> column & 1) == 1;
  }

  /** The dark modules of a row, the lowest bit leftmost; outside all are light. */
  long row(int row) {
    return row < 0 || row >= WIDTH ? 0 : rows[row];
  }
}
