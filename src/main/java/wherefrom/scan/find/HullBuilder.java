package wherefrom.scan.find;

import java.util.Arrays;

/** Convex hull of runs of pixels that come row by row: two chains that only turn one way. */
final class HullBuilder {
  private double[] leftX = new double[64];
  private double[] leftY = new double[64];
  private int leftCount;
  private double[] rightX = new double[64];
  private double[] rightY = new double[64];
  private int rightCount;
  private int row = -1;
  private int start;
  private int end;

  /** Pixels from start up to before end on a row; rows never go back. */
  void add(int runStart, int runEnd, int runRow) {
    if (runRow == row) {
      start = Math.min(start, runStart);
      end = Math.max(end, runEnd);
      return;
    }
    flush();
    row = runRow;
    start = runStart;
    end = runEnd;
  }

  private void flush() {
    if (row >= 0) {
      addLeft(start, row);
      addLeft(start, row + 1);
      addRight(end, row);
      addRight(end, row + 1);
    }
  }

  private void addLeft(double x, double y) {
    if (leftCount > 0 && leftY[leftCount - 1] == y && leftX[leftCount - 1] <= x) {
      return;
    }
    while ((leftCount > 0 && leftY[leftCount - 1] == y)
        || (leftCount > 1 && turn(leftX, leftY, leftCount, x, y) >= 0)) {
      leftCount--;
    }
    leftX = roomFor(leftX, leftCount);
    leftY = roomFor(leftY, leftCount);
    leftX[leftCount] = x;
    leftY[leftCount++] = y;
  }

  private void addRight(double x, double y) {
    if (rightCount > 0 && rightY[rightCount - 1] == y && rightX[rightCount - 1] >= x) {
      return;
    }
    while ((rightCount > 0 && rightY[rightCount - 1] == y)
        || (rightCount > 1 && turn(rightX, rightY, rightCount, x, y) <= 0)) {
      rightCount--;
    }
    rightX = roomFor(rightX, rightCount);
    rightY = roomFor(rightY, rightCount);
    rightX[rightCount] = x;
    rightY[rightCount++] = y;
  }

  private static double turn(double[] xs, double[] ys, int count, double x, double y) {
    double ax = xs[count - 1] - xs[count - 2];
    double ay = ys[count - 1] - ys[count - 2];
    return ax * (y - ys[count - 2]) - ay * (x - xs[count - 2]);
  }

  private static double[] roomFor(double[] values, int count) {
    return count < values.length ? values : Arrays.copyOf(values, 2 * count);
  }

  /** The hull, clockwise on the picture: down the right chain, up the left one. */
  Polygon close() {
    flush();
    double[] xs = new double[leftCount + rightCount];
    double[] ys = new double[leftCount + rightCount];
    System.arraycopy(rightX, 0, xs, 0, rightCount);
    System.arraycopy(rightY, 0, ys, 0, rightCount);
    for (int at = 0; at < leftCount; at++) {
      xs[rightCount + at] = leftX[leftCount - 1 - at];
      ys[rightCount + at] = leftY[leftCount - 1 - at];
    }
    return new Polygon(xs, ys);
  }
}
