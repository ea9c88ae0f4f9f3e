package wherefrom.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.zxing.ChecksumException;
import com.google.zxing.FormatException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.common.DecoderResult;
import com.google.zxing.qrcode.decoder.Decoder;
import java.awt.geom.Path2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import wherefrom.job.print.ScannerFace;
import wherefrom.job.print.TagFace;
import wherefrom.parts.LabelFrame;
import wherefrom.parts.TagSymbol;

class ModulesTest {

  private static DecoderResult decode(Modules modules) throws FormatException, ChecksumException {
    BitMatrix bits = new BitMatrix(TagSymbol.SIZE);
    for (int row = 0; row < TagSymbol.SIZE; row++) {
      for (int column = 0; column < TagSymbol.SIZE; column++) {
        if (modules.dark(row + LabelFrame.INSET, column + LabelFrame.INSET)) {
          bits.set(column, row);
        }
      }
    }
    return new Decoder().decode(bits);
  }

  @Test
  void theSetUpCardIsAVersionOneSymbolOfLevelHWithAllTenDigits() throws Exception {
    DecoderResult read = decode(Modules.ofDigits(ScannerFace.TEN_DIGITS));
    assertThat(read.getText()).isEqualTo("0123456789");
    assertThat(read.getECLevel()).isEqualTo("H");
    assertThat(read.getRawBytes()[0] >> 4).as("mode indicator: numeric").isEqualTo(1);
  }

  @Test
  void everyTagReadsBack() throws Exception {
    for (TagFace face : SampleTags.parts()) {
      assertThat(decode(Modules.of(face.code())).getText()).isEqualTo(face.code().digits());
    }
  }

  @Test
  void moreDigitsThanVersionOneHoldsAreRefused() {
    assertThatThrownBy(() -> Modules.ofDigits("1".repeat(18)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void theOutlineCoversExactlyTheDarkModules() {
    for (TagFace face : SampleTags.parts()) {
      Modules modules = Modules.of(face.code());
      Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
      for (int[] loop : SymbolOutline.of(modules)) {
        path.moveTo(loop[0], loop[1]);
        for (int at = 2; at < loop.length; at += 2) {
          assertThat(loop[at] == loop[at - 2] || loop[at + 1] == loop[at - 1]).isTrue();
          path.lineTo(loop[at], loop[at + 1]);
        }
        path.closePath();
      }
      assertThat(path.getBounds2D())
          .as("the frame is outermost")
          .isEqualTo(new java.awt.geom.Rectangle2D.Double(2, 2, 33, 33));
      for (int row = 0; row < Modules.WIDTH; row++) {
        for (int column = 0; column < Modules.WIDTH; column++) {
          assertThat(path.contains(column + 0.5, row + 0.5)).isEqualTo(modules.dark(row, column));
        }
      }
    }
  }

  @Test
  void placeCardsOfTheV8AreFortyTwoAndActionsSix() {
    assertThat(SampleTags.placeCards()).hasSize(42).doesNotHaveDuplicates();
    assertThat(wherefrom.job.print.TagFaces.actions())
        .extracting(TagFace::figures)
        .isEqualTo(List.of("UNDO", "SKIP", "NEXT", "REPEAT", "HELP", "YES"));
  }
}
