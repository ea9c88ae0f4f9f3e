package wherefrom.scan.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wherefrom.parts.SymbolLayout;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagSymbol;
import wherefrom.parts.TagType;
import wherefrom.scan.grid.ScoreTable;
import wherefrom.scan.grid.SoftGrid;

class ClosedSetMatcherTest {
  private static final int ENGINE = 3_141_592;
  private static final double CLEAREST = Math.sqrt(SymbolLayout.DATA_BITS);
  private final List<TagCode> issued = issued();
  private final ClosedSetMatcher matcher = new ClosedSetMatcher(new IssuedSymbols(issued));
  private final SplittableRandom random = new SplittableRandom(5);

  private static List<TagCode> issued() {
    List<TagCode> codes = new ArrayList<>();
    for (int item = 1; item <= 90; item++) {
      codes.add(new TagCode(TagType.PART, ENGINE, item, item % 7 == 0 ? 2 : 1));
    }
    return codes;
  }

  private static TagCode part(int item, int issue) {
    return new TagCode(TagType.PART, ENGINE, item, issue);
  }

  /** The grid of a tag: so much of it clear, the rest noise. */
  private SoftGrid grid(TagCode code, double signal, double noise) {
    TagSymbol symbol = TagSymbol.of(code);
    float[] darkness = new float[SymbolLayout.DATA_BITS];
    for (int bit = 0; bit < darkness.length; bit++) {
      int module = SymbolLayout.dataModule(bit);
      boolean dark = symbol.dark(module / SymbolLayout.SIZE, module % SymbolLayout.SIZE);
      darkness[bit] = (float) ((dark ? signal : -signal) + noise * (2 * random.nextDouble() - 1));
    }
    return SoftGrid.of(darkness, 1);
  }

  @Test
  void aClearTagHasAllTheEvidenceThereIs() {
    for (TagCode code : issued) {
      SymbolMatch match = matcher.find(grid(code, 1, 0)).orElseThrow();
      assertThat(match.code()).isEqualTo(code);
      assertThat(match.issued()).isTrue();
      assertThat(match.evidence()).isCloseTo(CLEAREST, within(1e-3));
      assertThat(AcceptanceBound.accepts(match, 0)).isTrue();
    }
  }

  @Test
  void scoresByGroupsOfEightAreTheSumsOfSignsTimesValues() {
    ScoreTable table = new ScoreTable();
    for (int round = 0; round < 50; round++) {
      SoftGrid grid = grid(part(1 + random.nextInt(400), 1), 0.3, 1);
      TagSymbol symbol = TagSymbol.of(part(1 + random.nextInt(400), 1));
      table.set(grid);
      double sum = 0;
      for (int bit = 0; bit < SymbolLayout.DATA_BITS; bit++) {
        int module = SymbolLayout.dataModule(bit);
        boolean dark = symbol.dark(module / SymbolLayout.SIZE, module % SymbolLayout.SIZE);
        sum += dark ? grid.darkness(bit) : -grid.darkness(bit);
      }
      assertThat(table.score(IssuedSymbols.modules(symbol))).isCloseTo((float) sum, within(1e-3f));
    }
  }

  @Test
  void retiredIssuesAndItemsThatWereNeverPrintedWinOverTheirNeighboursAndAreNotIssued() {
    for (TagCode relative :
        List.of(part(14, 1), part(14, 3), part(5, 2), part(91, 1), part(300, 1), part(490, 1))) {
      for (double noise = 0; noise < 3; noise += 0.25) {
        SymbolMatch match = matcher.find(grid(relative, 0.5, noise)).orElseThrow();
        assertThat(AcceptanceBound.accepts(match, 1)).as("%s, noise %s", relative, noise).isFalse();
      }
    }
  }

  @Test
  void noiseAloneIsNeverAccepted() {
    for (int round = 0; round < 20_000; round++) {
      SymbolMatch match = matcher.find(grid(part(1, 1), 0, 1)).orElseThrow();
      assertThat(AcceptanceBound.accepts(match, 1)).isFalse();
    }
  }

  @Test
  void evidenceThatIsEnoughWithThePatternIsNotEnoughWithoutIt() {
    double evidence = (AcceptanceBound.EVIDENCE + AcceptanceBound.EVIDENCE_IN_PATTERN) / 2;
    SymbolMatch match = new SymbolMatch(issued.get(0), true, evidence, AcceptanceBound.LEAD + 1);
    assertThat(AcceptanceBound.accepts(match, AcceptanceBound.PATTERN)).isTrue();
    assertThat(AcceptanceBound.accepts(match, AcceptanceBound.PATTERN - 0.01)).isFalse();
  }

  @Test
  void aRunnerUpThatIsNearOrATagThatWasNotIssuedIsRefused() {
    assertThat(
            AcceptanceBound.accepts(
                new SymbolMatch(issued.get(0), true, CLEAREST, AcceptanceBound.LEAD - 0.01), 1))
        .isFalse();
    assertThat(AcceptanceBound.accepts(new SymbolMatch(part(91, 1), false, CLEAREST, CLEAREST), 1))
        .isFalse();
  }

  @Test
  void withNothingIssuedNothingMatches() {
    assertThat(new ClosedSetMatcher(new IssuedSymbols(List.of())).find(grid(part(1, 1), 1, 0)))
        .isEmpty();
  }
}
