package wherefrom.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.zxing.EncodeHintType;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.common.DecoderResult;
import com.google.zxing.qrcode.decoder.Decoder;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.decoder.Mode;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Checked against the encoder and the decoder of ZXing core. */
class TagSymbolTest {
  private static final int CODES = 2_000;

  @Test
  void everyModuleIsAsTheReferenceEncoderDrawsIt() throws Exception {
    Random random = new Random(18_004);
    for (int count = 0; count < CODES; count++) {
      String digits = randomCode(random).digits();
      QRCode reference = reference(digits);
      assertThat(reference.getVersion().getVersionNumber()).isEqualTo(1);
      assertThat(reference.getMode()).isEqualTo(Mode.NUMERIC);
      assertThat(text(TagSymbol.ofDigits(digits))).isEqualTo(text(reference.getMatrix()));
    }
  }

  @Test
  void theReferenceDecoderReadsItWithoutCorrectingAnything() throws Exception {
    Random random = new Random(7_064);
    for (int count = 0; count < CODES; count++) {
      TagCode code = randomCode(random);
      DecoderResult result = new Decoder().decode(bits(TagSymbol.of(code)));
      assertThat(result.getText()).isEqualTo(code.digits());
      assertThat(result.getECLevel()).isEqualTo("H");
      assertThat(result.getErrorsCorrected()).isZero();
    }
  }

  @Test
  void anActionCardHasASymbolToo() throws Exception {
    TagCode card = new TagCode(TagType.ACTION_CARD, 0, 4, 1);
    assertThat(new Decoder().decode(bits(TagSymbol.of(card))).getText())
        .isEqualTo(card.digits())
        .startsWith("3000000000040");
  }

  @Test
  void anyTwoTagsDifferInAtLeastEighteenModules() {
    Random random = new Random(1);
    int job = random.nextInt(TagCode.MOST_ENGINE);
    int smallest = TagSymbol.SIZE * TagSymbol.SIZE;
    for (int item = 1; item < 400; item++) {
      TagSymbol here = TagSymbol.of(new TagCode(TagType.PART, job, item, 1));
      TagSymbol next = TagSymbol.of(new TagCode(TagType.PART, job, item + 1, 1));
      smallest = Math.min(smallest, distance(here, next));
    }
    assertThat(smallest).isGreaterThanOrEqualTo(18);
  }

  @Test
  void aRowHoldsItsModulesTheLeftmostLowest() {
    TagSymbol symbol = TagSymbol.of(new TagCode(TagType.PART, 1, 1, 1));
    for (int row = 0; row < TagSymbol.SIZE; row++) {
      StringBuilder modules = new StringBuilder();
      for (int column = TagSymbol.SIZE - 1; column >= 0; column--) {
        modules.append(symbol.dark(row, column) ? '1' : '0');
      }
      assertThat(symbol.row(row)).isEqualTo(Integer.parseInt(modules.toString(), 2));
    }
  }

  @Test
  void anythingButSixteenDigitsIsRefused() {
    assertThatThrownBy(() -> TagSymbol.ofDigits("123"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("sixteen");
  }

  private static TagCode randomCode(Random random) {
    return new TagCode(
        TagType.values()[random.nextInt(4)],
        random.nextInt(TagCode.MOST_ENGINE + 1),
        1 + random.nextInt(TagCode.MOST_ITEM),
        1 + random.nextInt(TagCode.MOST_ISSUE));
  }

  private static QRCode reference(String digits) throws Exception {
    return Encoder.encode(
        digits,
        ErrorCorrectionLevel.H,
        Map.of(EncodeHintType.QR_MASK_PATTERN, TagSymbol.MASK, EncodeHintType.QR_VERSION, 1));
  }

  private static int distance(TagSymbol one, TagSymbol other) {
    int differing = 0;
    for (int module = 0; module < TagSymbol.SIZE * TagSymbol.SIZE; module++) {
      int row = module / TagSymbol.SIZE;
      int column = module % TagSymbol.SIZE;
      differing += one.dark(row, column) == other.dark(row, column) ? 0 : 1;
    }
    return differing;
  }

  private static BitMatrix bits(TagSymbol symbol) {
    BitMatrix bits = new BitMatrix(TagSymbol.SIZE);
    for (int row = 0; row < TagSymbol.SIZE; row++) {
      for (int column = 0; column < TagSymbol.SIZE; column++) {
        if (symbol.dark(row, column)) {
          bits.set(column, row);
        }
      }
    }
    return bits;
  }

  private static String text(TagSymbol symbol) {
    return bits(symbol).toString("#", ".");
  }

  private static String text(ByteMatrix matrix) {
    BitMatrix bits = new BitMatrix(matrix.getWidth());
    for (int row = 0; row < matrix.getHeight(); row++) {
      for (int column = 0; column < matrix.getWidth(); column++) {
        if (matrix.get(column, row) == 1) {
          bits.set(column, row);
        }
      }
    }
    return bits.toString("#", ".");
  }
}
