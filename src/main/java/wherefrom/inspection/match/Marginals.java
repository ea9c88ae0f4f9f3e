package wherefrom.inspection.match;

/**
 * How likely each row belongs to each column, over all one-to-one assignments of the whole group:
 * the share of the weight of the assignments that say so. Exact, by subsets of columns, for groups
 * of up to {@link #MOST}.
 */
final class Marginals {
  /** Two to this power of subsets are kept. */
  static final int MOST = 20;

  private Marginals() {}

  /**
   * The likelihoods; each row adds up to 1. Rows are not more than columns.
   *
   * @param weights not negative; at least one assignment has a weight above 0
   */
  static double[][] of(double[][] weights) {
    int rows = weights.length;
    int columns = weights[0].length;
    if (columns > MOST || rows > columns) {
      throw new IllegalArgumentException("too many to compare: " + columns);
    }
    double[][] forward = forward(weights, columns);
    double[] after = new double[1 << columns];
    double[] before = new double[1 << columns];
    java.util.Arrays.fill(after, 1);
    double[][] shares = new double[rows][columns];
    for (int row = rows - 1; row >= 0; row--) {
      java.util.Arrays.fill(before, 0);
      double total = 0;
      for (int mask = 0; mask < after.length; mask++) {
        double here = forward[row][mask];
        if (here > 0) {
          total += spread(weights[row], mask, here, after, before, shares[row]);
        }
      }
      divide(shares[row], total);
      double[] swap = after;
      after = before;
      before = swap;
    }
    return shares;
  }

  /** The weight of placing the first rows on a set of columns, for each number of rows. */
  private static double[][] forward(double[][] weights, int columns) {
    double[][] forward = new double[weights.length][1 << columns];
    forward[0][0] = 1;
    for (int row = 0; row + 1 < weights.length; row++) {
      double[] next = forward[row + 1];
      double most = 0;
      for (int mask = 0; mask < next.length; mask++) {
        double here = forward[row][mask];
        for (int free = ~mask & (next.length - 1); here > 0 && free != 0; free &= free - 1) {
          int column = Integer.numberOfTrailingZeros(free);
          next[mask | 1 << column] += here * weights[row][column];
          most = Math.max(most, next[mask | 1 << column]);
        }
      }
      divide(next, most);
    }
    return forward;
  }

  /** Adds up what follows from a set for this row; gives the weight of all. */
  private static double spread(
      double[] weights, int mask, double here, double[] after, double[] before, double[] shares) {
    double total = 0;
    double sum = 0;
    for (int free = ~mask & (after.length - 1); free != 0; free &= free - 1) {
      int column = Integer.numberOfTrailingZeros(free);
      double follows = weights[column] * after[mask | 1 << column];
      sum += follows;
      shares[column] += here * follows;
      total += here * follows;
    }
    before[mask] = sum;
    return total;
  }

  private static void divide(double[] values, double by) {
    if (by > 0) {
      for (int at = 0; at < values.length; at++) {
        values[at] /= by;
      }
    }
  }
}
