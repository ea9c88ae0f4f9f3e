package wherefrom.scan.geometry;

/** Solves small symmetric systems by Cholesky decomposition. */
final class LinearSolver {
  private final double[][] lower;
  private final double[] solution;

  LinearSolver(int most) {
    lower = new double[most][most];
    solution = new double[most];
  }

  /**
   * The solution of (A + damping * diag(A)) x = b; only the lower half of A is read. The array is
   * used again by the next call.
   */
  double[] solve(double[][] a, double[] b, int size, double damping) {
    for (int row = 0; row < size; row++) {
      for (int column = 0; column <= row; column++) {
        double value = a[row][column];
        if (row == column) {
          value += damping * value + 1e-6;
        }
        for (int at = 0; at < column; at++) {
          value -= lower[row][at] * lower[column][at];
        }
        lower[row][column] =
            row == column ? Math.sqrt(Math.max(1e-9, value)) : value / lower[column][column];
      }
    }
    for (int row = 0; row < size; row++) {
      double value = b[row];
      for (int at = 0; at < row; at++) {
        value -= lower[row][at] * solution[at];
      }
      solution[row] = value / lower[row][row];
    }
    for (int row = size - 1; row >= 0; row--) {
      double value = solution[row];
      for (int at = row + 1; at < size; at++) {
        value -= lower[at][row] * solution[at];
      }
      solution[row] = value / lower[row][row];
    }
    return solution;
  }
}
