package wherefrom.scan;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Sighting;

/** Codes of other makes, as they are met on metal and in a mirror. */
class ForeignCodesTest {
  private static final int SIDE = 200;

  private static GreyImage picture(String text, boolean lightOnDark, boolean mirrored)
      throws WriterException {
    BitMatrix symbol = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, SIDE, SIDE);
    byte[] pixels = new byte[SIDE * SIDE];
    for (int at = 0; at < pixels.length; at++) {
      int x = at % SIDE;
      boolean dark = symbol.get(mirrored ? SIDE - 1 - x : x, at / SIDE);
      pixels[at] = (byte) (dark == lightOnDark ? 220 : 30);
    }
    return new GreyImage(SIDE, SIDE, pixels);
  }

  @ParameterizedTest
  @CsvSource({"false,false", "true,false", "false,true", "true,true"})
  void isFoundLightOnDarkAndMirroredToo(boolean lightOnDark, boolean mirrored)
      throws WriterException {
    List<Sighting> found =
        new PipelineReader().listForeign(picture("GASKET 17", lightOnDark, mirrored));
    assertThat(found).extracting(Sighting::text).containsExactly("GASKET 17");
  }

  @ParameterizedTest
  @CsvSource({"30", "220"})
  void anEvenPictureHasNone(int grey) {
    byte[] pixels = new byte[SIDE * SIDE];
    Arrays.fill(pixels, (byte) grey);
    assertThat(new PipelineReader().listForeign(new GreyImage(SIDE, SIDE, pixels))).isEmpty();
  }
}
