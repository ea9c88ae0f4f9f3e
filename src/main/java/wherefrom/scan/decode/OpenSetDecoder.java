package wherefrom.scan.decode;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import wherefrom.parts.SymbolLayout;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagSymbol;
import wherefrom.scan.grid.SoftGrid;

/**
 * Reads sixteen digits by the symbol's own error correction: the least certain codewords are
 * erased, more and more of them, until the rest can be corrected with syndromes to spare.
 */
public final class OpenSetDecoder {
  private static final int CODEWORDS =
      TagSymbol.DATA_CODEWORDS + TagSymbol.ERROR_CORRECTION_CODEWORDS;

  /** Syndromes kept as a check: for any digits, and for digits whose check digits agree. */
  private static final int SPARE_FOREIGN = 6;

  private static final int SPARE_OWN = 4;

  private static final int[] ERASURES = {0, 3, 6, 8, 10, 12, 13};

  private final ErasureDecoder decoder =
      new ErasureDecoder(CODEWORDS, TagSymbol.ERROR_CORRECTION_CODEWORDS);

  /** The digits; empty when too much is wrong or the text is something else. */
  public Optional<String> find(SoftGrid grid) {
    int[] received = new int[CODEWORDS];
    double[] doubt = new double[CODEWORDS];
    for (int bit = 0; bit < SymbolLayout.DATA_BITS; bit++) {
      int module = SymbolLayout.dataModule(bit);
      float darkness = grid.darkness(bit);
      boolean masked = SymbolLayout.masked(module / SymbolLayout.SIZE, module % SymbolLayout.SIZE);
      if (darkness > 0 != masked) {
        received[bit / 8] |= 0x80 >> bit % 8;
      }
      doubt[bit / 8] += Math.exp(-4 * Math.abs(darkness));
    }
    int[] order =
        IntStream.range(0, CODEWORDS)
            .boxed()
            .sorted(Comparator.comparingDouble(at -> -doubt[at]))
            .mapToInt(at -> at)
            .toArray();
    for (int erasures : ERASURES) {
      Optional<String> text = attempt(received, Arrays.copyOf(order, erasures));
      if (text.isPresent()) {
        return text;
      }
    }
    return Optional.empty();
  }

  private Optional<String> attempt(int[] received, int[] erased) {
    Optional<CorrectedCodewords> corrected = decoder.correct(received, erased, SPARE_OWN);
    if (corrected.isEmpty()) {
      return Optional.empty();
    }
    int used = 2 * corrected.get().errors() + erased.length;
    boolean sure = used <= TagSymbol.ERROR_CORRECTION_CODEWORDS - SPARE_FOREIGN;
    return NumericText.findSixteenDigits(corrected.get().codewords())
        .filter(digits -> sure || TagCode.find(digits).isPresent());
  }
}
