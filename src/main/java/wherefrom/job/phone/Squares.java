package wherefrom.job.phone;

import java.util.BitSet;

/** A symbol of dark and light squares, as many rows as columns. */
public final class Squares {
  private final int size;
  private final BitSet dark;

  /**
   * @param size how many rows
   * @param dark the dark squares, counted along the rows
   */
  public Squares(int size, BitSet dark) {
    this.size = size;
    this.dark = (BitSet) dark.clone();
  }

  /** How many rows, and columns; the light margin of four is not counted. */
  public int size() {
    return size;
  }

  /** Rows from the top, columns from the left, both from 0. */
  public boolean isDark(int row, int column) {
    return dark.get(row * size + column);
  }
}
