package wherefrom.parts;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.EncodeHintType;
import com.google.zxing.common.reedsolomon.GenericGF;
import com.google.zxing.common.reedsolomon.ReedSolomonEncoder;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The layout of a symbol, module by module, against the encoder of ZXing core. */
class SymbolLayoutTest {
  private static final String DIGITS = "1123456701730142";

  private static ByteMatrix reference(int mask) throws Exception {
    return Encoder.encode(
            DIGITS,
            ErrorCorrectionLevel.H,
            Map.of(EncodeHintType.QR_MASK_PATTERN, mask, EncodeHintType.QR_VERSION, 1))
        .getMatrix();
  }

  private static boolean dark(ByteMatrix drawn, int module) {
    return drawn.get(module % SymbolLayout.SIZE, module / SymbolLayout.SIZE) == 1;
  }

  private static Set<Integer> dataModules() {
    Set<Integer> modules = new HashSet<>();
    for (int bit = 0; bit < SymbolLayout.DATA_BITS; bit++) {
      modules.add(SymbolLayout.dataModule(bit));
    }
    return modules;
  }

  @Test
  void everyModuleIsEitherFixedAsTheReferenceDrawsItOrCarriesOneBit() throws Exception {
    Set<Integer> data = dataModules();
    ByteMatrix drawn = reference(TagSymbol.MASK);
    assertThat(data).hasSize(SymbolLayout.DATA_BITS);
    for (int module = 0; module < SymbolLayout.SIZE * SymbolLayout.SIZE; module++) {
      int row = module / SymbolLayout.SIZE;
      int column = module % SymbolLayout.SIZE;
      assertThat(SymbolLayout.isFixed(row, column))
          .as("row %d, column %d", row, column)
          .isEqualTo(!data.contains(module));
      if (!data.contains(module)) {
        assertThat(SymbolLayout.isFixedDark(row, column))
            .as("row %d, column %d", row, column)
            .isEqualTo(dark(drawn, module));
      }
    }
  }

  /** Mask 001 of the standard turns over every second row, beginning with the first. */
  @Test
  void theMaskIsWhatTellsTheReferencesDrawingsUnderTwoMasksApart() throws Exception {
    ByteMatrix ours = reference(TagSymbol.MASK);
    ByteMatrix rows = reference(1);
    for (int module : dataModules()) {
      int row = module / SymbolLayout.SIZE;
      boolean differs = dark(ours, module) != dark(rows, module);
      assertThat(SymbolLayout.masked(row, module % SymbolLayout.SIZE))
          .isEqualTo(differs != (row % 2 == 0));
    }
  }

  /** For every count of check codewords that the standard uses in small symbols. */
  @Test
  void errorCorrectionIsThatOfTheReference() {
    Random random = new Random(5);
    for (int count : new int[] {7, 10, 13, 17, 22, 30}) {
      int[] all = new int[9 + count];
      for (int at = 0; at < 9; at++) {
        all[at] = random.nextInt(256);
      }
      int[] data = Arrays.copyOf(all, 9);
      new ReedSolomonEncoder(GenericGF.QR_CODE_FIELD_256).encode(all, count);
      assertThat(new ReedSolomon(count).errorCorrection(data))
          .isEqualTo(Arrays.copyOfRange(all, 9, all.length));
    }
  }

  /** A frame two modules thick, two from the label's edge, four from the symbol, all round. */
  @Test
  void theFrameRunsRoundTheSymbol() {
    assertThat(LabelFrame.WIDTH).isEqualTo(37);
    String across = "..#################################..";
    String sides = "..##.............................##..";
    String white = ".".repeat(37);
    for (int row = 0; row < LabelFrame.WIDTH; row++) {
      int edge = Math.min(row, 36 - row);
      String wanted = edge < 2 ? white : edge < 4 ? across : sides;
      StringBuilder drawn = new StringBuilder();
      for (int column = 0; column < LabelFrame.WIDTH; column++) {
        drawn.append(LabelFrame.isFrame(row, column) ? '#' : '.');
      }
      assertThat(drawn).as("row %d", row).hasToString(wanted);
    }
  }
}
