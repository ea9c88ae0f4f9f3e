package wherefrom.scan.geometry;

import wherefrom.parts.SymbolLayout;

/** What a label should look like at four places of each module, and how sure that is. */
final class WarpTarget {
  /** Places along a side: two for each module. */
  static final int SIDE = 60;

  private static final double FIRST = -14.75;

  /** Softest value that is taken for sure. */
  private static final double SURE = 0.8;

  private final float[] known = new float[SIDE * SIDE];
  private final float[] sure = new float[SIDE * SIDE];
  private final float[] row = new float[SIDE];
  final float[] value = new float[SIDE * SIDE];
  final float[] weight = new float[SIDE * SIDE];

  WarpTarget(LabelPattern pattern) {
    double end = pattern.frameHalf() + 1;
    for (int at = 0; at < known.length; at++) {
      double reach = Math.max(Math.abs(u(at)), Math.abs(v(at)));
      known[at] = (float) pattern.ideal(u(at), v(at));
      sure[at] = reach > end || known[at] == 0 ? 0 : 1;
    }
  }

  static double u(int at) {
    return FIRST + at % SIDE * 0.5;
  }

  static double v(int at) {
    return FIRST + 0.5 * Math.floorDiv(at, SIDE);
  }

  /** Takes the data modules for what they seem to be. */
  void set(float[] dark) {
    for (int bit = 0; bit < SymbolLayout.DATA_BITS; bit++) {
      int module = SymbolLayout.dataModule(bit);
      float darkness = dark[bit];
      float share = (float) Math.min(1, Math.abs(darkness) / SURE);
      int first =
          place(module / SymbolLayout.SIZE - 10) * SIDE + place(module % SymbolLayout.SIZE - 10);
      for (int spot = 0; spot < 4; spot++) {
        int at = first + spot % 2 + spot / 2 * SIDE;
        known[at] = darkness > 0 ? -1 : 1;
        sure[at] = share * share;
      }
    }
    for (int at = 0; at < value.length; at++) {
      value[at] = known[at] * sure[at];
      weight[at] = sure[at];
    }
    soften(value);
    soften(weight);
  }

  private static int place(int module) {
    return (int) Math.round((module - 0.25 - FIRST) * 2);
  }

  /** One, two, one across and down. */
  private void soften(float[] values) {
    for (int line = 0; line < SIDE; line++) {
      soften(values, line * SIDE, 1);
    }
    for (int line = 0; line < SIDE; line++) {
      soften(values, line, SIDE);
    }
  }

  private void soften(float[] values, int from, int step) {
    for (int at = 0; at < SIDE; at++) {
      row[at] = values[from + at * step];
    }
    for (int at = 0; at < SIDE; at++) {
      float before = row[Math.max(0, at - 1)];
      float after = row[Math.min(SIDE - 1, at + 1)];
      values[from + at * step] = (before + 2 * row[at] + after) / 4;
    }
  }
}
