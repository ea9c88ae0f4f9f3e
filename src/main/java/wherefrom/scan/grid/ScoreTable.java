package wherefrom.scan.grid;

import wherefrom.parts.SymbolLayout;

/**
 * Scores of whole symbols on one grid, eight modules at a time: for each group of eight and each of
 * their 256 patterns the sum of signs times soft values stands ready.
 */
public final class ScoreTable {
  private static final int GROUPS = SymbolLayout.DATA_BITS / 8;
  private final float[] sums = new float[GROUPS * 256];

  /** Goes to a grid. */
  public void set(SoftGrid grid) {
    for (int group = 0; group < GROUPS; group++) {
      int base = group * 256;
      float light = 0;
      for (int bit = 0; bit < 8; bit++) {
        light -= grid.darkness(group * 8 + bit);
      }
      sums[base] = light;
      for (int pattern = 1; pattern < 256; pattern++) {
        int lowest = Integer.numberOfTrailingZeros(pattern);
        sums[base + pattern] =
            sums[base + (pattern & (pattern - 1))] + 2 * grid.darkness(group * 8 + lowest);
      }
    }
  }

  /** The sum over the data modules: soft values where it is dark, their opposites where light. */
  public float score(byte[] modules) {
    float sum = 0;
    for (int group = 0; group < GROUPS; group++) {
      sum += sums[group * 256 + (modules[group] & 0xFF)];
    }
    return sum;
  }

  /** The same of a symbol that is 64 modules to a number, the lowest bit first. */
  public float score(long[] modules) {
    float sum = 0;
    for (int group = 0; group < GROUPS; group++) {
      sum += sums[group * 256 + (int) ((modules[group / 8] >>> (group % 8 * 8)) & 0xFF)];
    }
    return sum;
  }
}
