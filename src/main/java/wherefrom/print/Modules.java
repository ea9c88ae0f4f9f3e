package wherefrom.print;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import wherefrom.parts.LabelFrame;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagSymbol;

/**
 * The dark modules of a symbol with its frame, {@link LabelFrame#WIDTH} each way; the outermost are
 * the white margin.
 */
final class Modules {
  static final int WIDTH = LabelFrame.WIDTH;

  private static final boolean[] FRAME = frame();

  private final boolean[] dark = FRAME.clone();

  private Modules(Symbol symbol) {
    for (int row = 0; row < TagSymbol.SIZE; row++) {
      int start = (row + LabelFrame.INSET) * WIDTH + LabelFrame.INSET;
      for (int column = 0; column < TagSymbol.SIZE; column++) {
        dark[start + column] = symbol.dark(row, column);
      }
    }
  }

  private static boolean[] frame() {
    boolean[] frame = new boolean[WIDTH * WIDTH];
    for (int module = 0; module < frame.length; module++) {
      frame[module] = LabelFrame.isFrame(module / WIDTH, module % WIDTH);
    }
    return frame;
  }

  private interface Symbol {
    boolean dark(int row, int column);
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
    return row >= 0 && column >= 0 && row < WIDTH && column < WIDTH && dark[row * WIDTH + column];
  }
}
