package wherefrom.scan.decode;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import wherefrom.parts.SymbolLayout;
import wherefrom.parts.TagCode;
import wherefrom.scan.grid.ScoreTable;
import wherefrom.scan.grid.SoftGrid;

/**
 * Reads a tag by what each module seems to be and how surely, where error correction by whole
 * codewords gives up: the surest modules that settle all digits are believed, then believed but for
 * one and but for two of them, and the symbol that fits the whole grid best is taken (M. P. C.
 * Fossorier and S. Lin, Soft-Decision Decoding of Linear Block Codes Based on Ordered Statistics,
 * IEEE Transactions on Information Theory 41(5), 1995, order two).
 *
 * <p><b>When it is believed.</b> Six types, ten million engines and the {@link #MOST_ITEM} items
 * and {@link #MOST_ISSUE} issues that are read this way are 1.1·10¹² tags. On a grid that none of
 * them was chosen for, each reaches {@link #EVIDENCE} with a probability below 2.6·10⁻²⁰
 * (Hoeffding's inequality, as in {@link wherefrom.scan.match.AcceptanceBound}): 2.8·10⁻⁸ for each
 * grid at most, were every tag tried, and 10⁻⁷ for each frame, since only grids are asked where the
 * pattern of every label fits well. On a damaged tag the runner-up is another symbol of the code,
 * 1,486 of which are looked at; it must lie {@link #LEAD} behind, and the best of them all must be
 * a tag by its check digits, which one in some 250 is by chance.
 */
public final class SoftDecoder {
  /** Least evidence, in standard deviations of a chance score. */
  static final double EVIDENCE = 9.5;

  /** Least lead over any other symbol, in standard deviations. */
  static final double LEAD = 2.3;

  static final int MOST_ITEM = 2_000;
  static final int MOST_ISSUE = 9;

  private final ScoreTable table = new ScoreTable();
  private long[][] rows = new long[0][];
  private long[] best = TagWords.zero();
  private long[] second = TagWords.zero();
  private float bestScore;
  private float secondScore;

  /** The sixteen digits of a tag; empty where none is certain. */
  public Optional<String> find(SoftGrid grid) {
    table.set(grid);
    bestScore = Float.NEGATIVE_INFINITY;
    secondScore = Float.NEGATIVE_INFINITY;
    long[] sure = believed(grid);
    take(sure);
    for (int one = 0; one < TagWords.BITS; one++) {
      long[] but = sure.clone();
      TagWords.turn(but, rows[one]);
      take(but);
      for (int other = 0; other < one; other++) {
        TagWords.turn(but, rows[other]);
        take(but);
        TagWords.turn(but, rows[other]);
      }
    }
    return isCertain(grid)
        ? NumericText.findSixteenDigits(TagWords.codewords(best)).filter(SoftDecoder::isLikely)
        : Optional.empty();
  }

  private static boolean isLikely(String digits) {
    return TagCode.find(digits)
        .filter(code -> code.item() <= MOST_ITEM && code.issue() <= MOST_ISSUE)
        .isPresent();
  }

  private boolean isCertain(SoftGrid grid) {
    double squares = 0;
    double apart = 0;
    for (int bit = 0; bit < SymbolLayout.DATA_BITS; bit++) {
      double square = grid.darkness(bit) * grid.darkness(bit);
      squares += square;
      apart += TagWords.isSet(best, bit) == TagWords.isSet(second, bit) ? 0 : square;
    }
    return bestScore >= EVIDENCE * Math.sqrt(squares)
        && (bestScore - secondScore) / 2 >= LEAD * Math.sqrt(apart)
        && bestScore > 0;
  }

  private void take(long[] word) {
    float score = table.score(word);
    if (score > bestScore) {
      second = best;
      secondScore = bestScore;
      best = word.clone();
      bestScore = score;
    } else if (score > secondScore) {
      second = word.clone();
      secondScore = score;
    }
  }

  /** The symbol that agrees with the surest modules; each row then changes one of these alone. */
  private long[] believed(SoftGrid grid) {
    rows = TagWords.changeList();
    long[] word = TagWords.zero();
    int[] order =
        IntStream.range(0, SymbolLayout.DATA_BITS)
            .boxed()
            .sorted(Comparator.comparingDouble(bit -> -Math.abs(grid.darkness(bit))))
            .mapToInt(bit -> bit)
            .toArray();
    int settled = 0;
    for (int at = 0; settled < TagWords.BITS; at++) {
      if (settle(order[at], settled)) {
        if (TagWords.isSet(word, order[at]) != grid.darkness(order[at]) > 0) {
          TagWords.turn(word, rows[settled]);
        }
        settled++;
      }
    }
    return word;
  }

  /** Makes a module depend on one row alone, the one with that number; false where it cannot. */
  private boolean settle(int bit, int number) {
    int row = number;
    while (row < TagWords.BITS && !TagWords.isSet(rows[row], bit)) {
      row++;
    }
    if (row == TagWords.BITS) {
      return false;
    }
    long[] found = rows[row];
    rows[row] = rows[number];
    rows[number] = found;
    for (long[] other : rows) {
      if (other != found && TagWords.isSet(other, bit)) {
        TagWords.turn(other, found);
      }
    }
    return true;
  }
}
