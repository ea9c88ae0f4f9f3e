package wherefrom.scan.decode;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wherefrom.parts.SymbolLayout;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagSymbol;
import wherefrom.parts.TagType;
import wherefrom.scan.grid.SoftGrid;

class SoftDecoderTest {
  private final SoftDecoder decoder = new SoftDecoder();
  private final SplittableRandom random = new SplittableRandom(54);

  private TagCode tag() {
    return new TagCode(
        TagType.values()[random.nextInt(TagType.values().length)],
        random.nextInt(TagCode.MOST_ENGINE),
        1 + random.nextInt(SoftDecoder.MOST_ITEM),
        1 + random.nextInt(SoftDecoder.MOST_ISSUE));
  }

  /** The grid of a symbol: so much of it clear, the rest noise of that deviation. */
  private SoftGrid grid(String digits, double signal, double noise) {
    TagSymbol symbol = TagSymbol.ofDigits(digits);
    float[] darkness = new float[SymbolLayout.DATA_BITS];
    for (int bit = 0; bit < darkness.length; bit++) {
      int module = SymbolLayout.dataModule(bit);
      boolean dark = symbol.dark(module / SymbolLayout.SIZE, module % SymbolLayout.SIZE);
      darkness[bit] = (float) ((dark ? signal : -signal) + noise * random.nextGaussian());
    }
    return SoftGrid.of(darkness, 1);
  }

  @Test
  void clearTagsAreRead() {
    for (int round = 0; round < 50; round++) {
      String digits = tag().digits();
      assertThat(decoder.find(grid(digits, 1, 0))).contains(digits);
    }
  }

  /** Noise of 0.8 turns one module in ten over: some fifteen codewords of 26 are then wrong. */
  @Test
  void evenNoiseIsReadWhereWholeCodewordsAreNot() {
    OpenSetDecoder whole = new OpenSetDecoder();
    int byCodewords = 0;
    int bySoft = 0;
    for (int round = 0; round < 200; round++) {
      String digits = tag().digits();
      SoftGrid grid = grid(digits, 1, 0.8);
      byCodewords += whole.find(grid).filter(digits::equals).isPresent() ? 1 : 0;
      bySoft += decoder.find(grid).filter(digits::equals).isPresent() ? 1 : 0;
    }
    assertThat(byCodewords).isLessThan(20);
    assertThat(bySoft).isGreaterThan(190);
  }

  @Test
  void nothingIsReadWrongAtAnyNoise() {
    for (int round = 0; round < 2_000; round++) {
      String digits = tag().digits();
      String said = decoder.find(grid(digits, 1, 0.6 + round / 1_000.0)).orElse(digits);
      assertThat(said).isEqualTo(digits);
    }
  }

  @Test
  void noiseAloneIsNeverRead() {
    for (int round = 0; round < 2_000; round++) {
      assertThat(decoder.find(grid("0".repeat(16), 0, 1))).isEmpty();
    }
  }

  @Test
  void whatIsNoTagByItsCheckDigitsAndWhatNoShopHasIsNotRead() {
    TagCode tag = new TagCode(TagType.PART, 1_234_567, 17, 1);
    int check = Integer.parseInt(tag.digits().substring(14));
    String wrong = tag.digits().substring(0, 14) + "%02d".formatted((check + 1) % 97);
    assertThat(decoder.find(grid(wrong, 1, 0))).isEmpty();
    TagCode late = new TagCode(TagType.PART, 1_234_567, 17, SoftDecoder.MOST_ISSUE + 1);
    assertThat(decoder.find(grid(late.digits(), 1, 0))).isEmpty();
    TagCode far = new TagCode(TagType.PART, 1_234_567, SoftDecoder.MOST_ITEM + 1, 1);
    assertThat(decoder.find(grid(far.digits(), 1, 0))).isEmpty();
  }
}
