package wherefrom.scan.match;

import java.util.Optional;
import wherefrom.parts.SymbolLayout;
import wherefrom.scan.grid.ScoreTable;
import wherefrom.scan.grid.SoftGrid;

/** Finds the symbol that fits a grid best among all that were issued and their relatives. */
public final class ClosedSetMatcher {
  private final IssuedSymbols symbols;
  private final ScoreTable table = new ScoreTable();

  public ClosedSetMatcher(IssuedSymbols symbols) {
    this.symbols = symbols;
  }

  /** The best match; empty when nothing was issued or the grid says nothing. */
  public Optional<SymbolMatch> find(SoftGrid grid) {
    double squares = 0;
    for (int bit = 0; bit < SymbolLayout.DATA_BITS; bit++) {
      squares += grid.darkness(bit) * grid.darkness(bit);
    }
    if (symbols.isEmpty() || squares < 1e-6) {
      return Optional.empty();
    }
    table.set(grid);
    int best = -1;
    int second = -1;
    double bestScore = Double.NEGATIVE_INFINITY;
    double secondScore = Double.NEGATIVE_INFINITY;
    for (int number = 0; number < symbols.size(); number++) {
      double score = table.score(symbols.modules(number));
      if (score > bestScore) {
        second = best;
        secondScore = bestScore;
        best = number;
        bestScore = score;
      } else if (score > secondScore) {
        second = number;
        secondScore = score;
      }
    }
    double lead = second < 0 ? Double.POSITIVE_INFINITY : lead(grid, best, second);
    return Optional.of(
        new SymbolMatch(
            symbols.code(best), symbols.isIssued(best), bestScore / Math.sqrt(squares), lead));
  }

  /** Evidence from the modules in which two symbols differ. */
  private double lead(SoftGrid grid, int best, int second) {
    byte[] one = symbols.modules(best);
    byte[] other = symbols.modules(second);
    double sum = 0;
    double squares = 0;
    for (int bit = 0; bit < SymbolLayout.DATA_BITS; bit++) {
      int mask = 1 << bit % 8;
      if (((one[bit / 8] ^ other[bit / 8]) & mask) != 0) {
        sum += (one[bit / 8] & mask) != 0 ? grid.darkness(bit) : -grid.darkness(bit);
        squares += grid.darkness(bit) * grid.darkness(bit);
      }
    }
    return squares == 0 ? 0 : sum / Math.sqrt(squares);
  }
}
