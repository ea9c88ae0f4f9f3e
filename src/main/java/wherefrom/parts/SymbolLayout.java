package wherefrom.parts;

/**
 * Where everything lies in a QR symbol of version 1 at error correction level H with the mask of
 * {@link TagSymbol#MASK} (ISO/IEC 18004): modules are numbered {@code row * SIZE + column} from the
 * top left.
 */
public final class SymbolLayout {
  /** Modules along one side. */
  public static final int SIZE = 21;

  /** Data modules: 26 codewords of 8 bits, first bit of the first codeword first. */
  public static final int DATA_BITS = 208;

  private static final int TIMING = 6;

  /** Level H and the mask, with their BCH check bits and the fixed format mask; 15 bits. */
  private static final int FORMAT = format(0b10_000 | TagSymbol.MASK);

  private static final int[] DATA_MODULES = dataModules();

  private SymbolLayout() {}

  /** Whether a module belongs to the finder, timing and format patterns, alike on every tag. */
  public static boolean isFixed(int row, int column) {
    boolean upperLeft = row < 9 && column < 9;
    boolean upperRight = row < 9 && column >= SIZE - 8;
    boolean lowerLeft = row >= SIZE - 8 && column < 9;
    return upperLeft || upperRight || lowerLeft || row == TIMING || column == TIMING;
  }

  /** Whether a module that {@link #isFixed} is dark. */
  public static boolean isFixedDark(int row, int column) {
    if (isFormat(row, column)) {
      return formatDark(row, column);
    }
    if (row == TIMING && column > 7 && column < SIZE - 8) {
      return column % 2 == 0;
    }
    if (column == TIMING && row > 7 && row < SIZE - 8) {
      return row % 2 == 0;
    }
    int centreRow = row < 9 ? 3 : SIZE - 4;
    int centreColumn = column < 9 ? 3 : SIZE - 4;
    int ring = Math.max(Math.abs(row - centreRow), Math.abs(column - centreColumn));
    return ring < 2 || ring == 3;
  }

  /** The module that carries a data bit, 0 to {@link #DATA_BITS} - 1. */
  public static int dataModule(int bit) {
    return DATA_MODULES[bit];
  }

  /** Whether the mask turns a data module over: pattern 011 of the standard. */
  public static boolean masked(int row, int column) {
    return (row + column) % 3 == 0;
  }

  private static boolean isFormat(int row, int column) {
    boolean beside = column == 8 && row != TIMING && (row < 9 || row >= SIZE - 8);
    boolean below = row == 8 && column != TIMING && (column < 9 || column >= SIZE - 8);
    return beside || below;
  }

  private static boolean formatDark(int row, int column) {
    if (row == SIZE - 8 && column == 8) {
      return true;
    }
    int bit;
    if (column == 8 && row <= 8) {
      bit = row < TIMING ? row : row - 1;
    } else if (row == 8 && column < 8) {
      bit = column == 7 ? 8 : 14 - column;
    } else {
      bit = row == 8 ? SIZE - 1 - column : row - (SIZE - 15);
    }
    return (FORMAT >> bit & 1) == 1;
  }

  private static int format(int data) {
    int remainder = data;
    for (int step = 0; step < 10; step++) {
      remainder = remainder << 1 ^ (remainder >> 9) * 0x537;
    }
    return ((data << 10) | (remainder & 0x3FF)) ^ 0x5412;
  }

  /** Column pairs from the right, upwards and downwards in turn, the timing column left out. */
  private static int[] dataModules() {
    int[] modules = new int[DATA_BITS];
    int count = 0;
    boolean up = true;
    for (int right = SIZE - 1; right > 0; right -= right == TIMING + 2 ? 3 : 2) {
      for (int step = 0; step < SIZE; step++) {
        int row = up ? SIZE - 1 - step : step;
        for (int column = right; column >= right - 1; column--) {
          if (!isFixed(row, column)) {
            modules[count++] = row * SIZE + column;
          }
        }
      }
      up = !up;
    }
    return modules;
  }
}
