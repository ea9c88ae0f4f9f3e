package wherefrom.phone;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.BitSet;
import wherefrom.job.phone.Squares;

/** A link as a QR symbol that every phone's camera opens. */
final class JoinSymbol {
  private JoinSymbol() {}

  static Squares of(String link) {
    try {
      ByteMatrix squares = Encoder.encode(link, ErrorCorrectionLevel.M).getMatrix();
      int size = squares.getWidth();
      BitSet dark = new BitSet(size * size);
      for (int at = 0; at < size * size; at++) {
        dark.set(at, squares.get(at % size, at / size) == 1);
      }
      return new Squares(size, dark);
    } catch (WriterException e) {
      throw new IllegalStateException("a link of this length fits", e);
    }
  }
}
