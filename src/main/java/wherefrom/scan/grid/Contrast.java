package wherefrom.scan.grid;

import wherefrom.parts.SymbolLayout;

/**
 * Soft values from grey values: around each module the usual dark and the usual light are found,
 * and the value says where between them it lies. Where dark and light hardly differ, as under oil
 * or paint, the value stays near 0.
 */
final class Contrast {
  private static final int SIDE = GridSampler.SIDE;
  private static final int REACH = 3;
  private static final int ROUNDS = 2;

  /** Part of the whole symbol's contrast below which a patch counts as without contrast. */
  private static final double LEAST = 0.22;

  /**
   * Share of a value that is kept by how many of the eight modules round it look alike: in a symbol
   * all nine are alike once in two hundred times, under a stroke, a splash or a torn edge always.
   */
  private static final float[] TRUST = {1, 1, 1, 1, 1, 1, 1, 0.7f, 0.3f};

  private final float[] values = new float[SIDE * SIDE];
  private final float[] middle = new float[SIDE * SIDE];
  private final float[] half = new float[SIDE * SIDE];
  private final BoxSums boxes = new BoxSums(SIDE, REACH);
  private final float[] sum = new float[SIDE * SIDE];
  private final float[] dark = new float[SIDE * SIDE];
  private final float[] darkSum = new float[SIDE * SIDE];
  private final float[] darks = new float[SIDE * SIDE];
  private final float[] darkCount = new float[SIDE * SIDE];

  SoftGrid grid(float[] grey) {
    boxes.sum(grey, sum);
    for (int at = 0; at < middle.length; at++) {
      middle[at] = sum[at] / boxes.places(at);
    }
    for (int round = 0; round < ROUNDS; round++) {
      split(grey);
    }
    double whole = 0;
    for (float one : half) {
      whole += one;
    }
    double least = Math.max(1.5, LEAST * whole / half.length);
    for (int at = 0; at < values.length; at++) {
      values[at] = value(grey, at, least);
    }
    float[] darkness = new float[SymbolLayout.DATA_BITS];
    for (int bit = 0; bit < darkness.length; bit++) {
      int at = cell(SymbolLayout.dataModule(bit));
      darkness[bit] = values[at] * TRUST[alike(at)];
    }
    return new SoftGrid(darkness, fixedAgreement(grey, least));
  }

  /** How many of the eight modules round one lie on the same side of the middle. */
  private int alike(int at) {
    int count = 0;
    for (int row = -SIDE; row <= SIDE; row += SIDE) {
      for (int column = -1; column <= 1; column++) {
        int near = at + row + column;
        count += near != at && values[near] > 0 == values[at] > 0 ? 1 : 0;
      }
    }
    return count;
  }

  private static int cell(int module) {
    return (module / SymbolLayout.SIZE + 1) * SIDE + module % SymbolLayout.SIZE + 1;
  }

  private float value(float[] grey, int at, double least) {
    double value = (middle[at] - grey[at]) / Math.max(least, half[at]);
    return (float) Math.max(-SoftGrid.MOST, Math.min(SoftGrid.MOST, value));
  }

  /** Means of what is darker and lighter than the middle around each module; the middle moves. */
  private void split(float[] grey) {
    for (int at = 0; at < middle.length; at++) {
      boolean isDark = grey[at] < middle[at];
      dark[at] = isDark ? grey[at] : 0;
      darks[at] = isDark ? 1 : 0;
    }
    boxes.sum(dark, darkSum);
    boxes.sum(darks, darkCount);
    for (int at = 0; at < middle.length; at++) {
      float lights = boxes.places(at) - darkCount[at];
      float darkMean = darkCount[at] == 0 ? middle[at] : darkSum[at] / darkCount[at];
      float lightMean = lights == 0 ? middle[at] : (sum[at] - darkSum[at]) / lights;
      middle[at] = (darkMean + lightMean) / 2;
      half[at] = (lightMean - darkMean) / 2;
    }
  }

  private double fixedAgreement(float[] grey, double least) {
    double agree = 0;
    double squares = 0;
    int count = 0;
    for (int module = 0; module < SymbolLayout.SIZE * SymbolLayout.SIZE; module++) {
      int row = module / SymbolLayout.SIZE;
      int column = module % SymbolLayout.SIZE;
      if (SymbolLayout.isFixed(row, column)) {
        float value = value(grey, cell(module), least);
        agree += SymbolLayout.isFixedDark(row, column) ? value : -value;
        squares += value * value;
        count++;
      }
    }
    return squares == 0 ? 0 : agree / Math.sqrt(squares * count);
  }
}
