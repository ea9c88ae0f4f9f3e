package wherefrom.inspection.match;

import java.util.Arrays;

/**
 * The cheapest one-to-one assignment of rows to columns (Kuhn 1955; the shortest augmenting path
 * form with potentials, from memory). There are at least as many columns as rows.
 */
public final class Assignment {
  private static final double FAR = Double.POSITIVE_INFINITY;

  private final double[][] cost;
  private final int rows;
  private final int columns;
  private final double[] rowPotential;
  private final double[] columnPotential;
  private final int[] rowOfColumn;

  private Assignment(double[][] cost) {
    this.cost = cost;
    rows = cost.length;
    columns = rows == 0 ? 0 : cost[0].length;
    rowPotential = new double[rows + 1];
    columnPotential = new double[columns + 1];
    rowOfColumn = new int[columns + 1];
  }

  /**
   * The column of each row.
   *
   * @param cost finite; each row of one length, not shorter than there are rows
   */
  public static int[] cheapest(double[][] cost) {
    Assignment assignment = new Assignment(cost);
    if (assignment.rows > assignment.columns) {
      throw new IllegalArgumentException("more rows than columns");
    }
    for (int row = 1; row <= assignment.rows; row++) {
      assignment.add(row);
    }
    return assignment.columnsOfRows();
  }

  /** Column 0 stands for "not yet placed". */
  private void add(int row) {
    rowOfColumn[0] = row;
    int[] cameFrom = new int[columns + 1];
    double[] least = new double[columns + 1];
    boolean[] used = new boolean[columns + 1];
    Arrays.fill(least, FAR);
    int column = 0;
    do {
      used[column] = true;
      column = advance(column, cameFrom, least, used);
    } while (rowOfColumn[column] != 0);
    while (column != 0) {
      int before = cameFrom[column];
      rowOfColumn[column] = rowOfColumn[before];
      column = before;
    }
  }

  /** Shortens the potentials and gives the next column of the tree. */
  private int advance(int from, int[] cameFrom, double[] least, boolean[] used) {
    int row = rowOfColumn[from];
    double delta = FAR;
    int next = 0;
    for (int column = 1; column <= columns; column++) {
      if (!used[column]) {
        double reduced = cost[row - 1][column - 1] - rowPotential[row] - columnPotential[column];
        if (reduced < least[column]) {
          least[column] = reduced;
          cameFrom[column] = from;
        }
        if (least[column] < delta) {
          delta = least[column];
          next = column;
        }
      }
    }
    for (int column = 0; column <= columns; column++) {
      if (used[column]) {
        rowPotential[rowOfColumn[column]] += delta;
        columnPotential[column] -= delta;
      } else {
        least[column] -= delta;
      }
    }
    return next;
  }

  private int[] columnsOfRows() {
    int[] columnOfRow = new int[rows];
    for (int column = 1; column <= columns; column++) {
      if (rowOfColumn[column] > 0) {
        columnOfRow[rowOfColumn[column] - 1] = column - 1;
      }
    }
    return columnOfRow;
  }
}
