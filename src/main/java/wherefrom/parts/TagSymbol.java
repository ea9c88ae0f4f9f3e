package wherefrom.parts;

/**
 * The QR symbol of a tag (ISO/IEC 18004): version 1, error correction level H, numeric mode, always
 * the same mask, so that every tag has the same format information and a reader need not see it.
 */
public final class TagSymbol {
  /** Modules along one side. */
  public static final int SIZE = SymbolLayout.SIZE;

  /** The mask pattern reference of every tag. */
  public static final int MASK = 3;

  /** Error correction codewords of version 1-H. */
  public static final int ERROR_CORRECTION_CODEWORDS = 17;

  /** Data codewords of version 1-H: with mode and length exactly 16 digits and a terminator. */
  public static final int DATA_CODEWORDS = 9;

  private static final int NUMERIC = 0b0001;

  private static final ReedSolomon CHECK = new ReedSolomon(ERROR_CORRECTION_CODEWORDS);

  /** What every tag has, and the mask where the data lies. */
  private static final int[] ALIKE = alike();

  /** One number a row; the lowest bit is the leftmost module. */
  private final int[] rows;

  private TagSymbol(int[] rows) {
    this.rows = rows;
  }

  /** The symbol of a tag. */
  public static TagSymbol of(TagCode code) {
    return ofDigits(code.digits());
  }

  /**
   * The symbol of any sixteen digits, whatever they stand for.
   *
   * @throws IllegalArgumentException when they are not sixteen decimal digits
   */
  public static TagSymbol ofDigits(String digits) {
    if (!TagCode.isSixteenDigits(digits)) {
      throw new IllegalArgumentException("not sixteen digits: " + digits);
    }
    return ofCodewords(codewords(digits));
  }

  /** Whether a module is dark; row and column count from 0 at the top left. */
  public boolean dark(int row, int column) {
    return (rows[row] >> column & 1) == 1;
  }

  /** The dark modules of a row; the lowest bit is the leftmost. */
  public int row(int row) {
    return rows[row];
  }

  private static int[] alike() {
    int[] rows = new int[SIZE];
    for (int module = 0; module < SIZE * SIZE; module++) {
      int row = module / SIZE;
      int column = module % SIZE;
      boolean dark =
          SymbolLayout.isFixed(row, column)
              ? SymbolLayout.isFixedDark(row, column)
              : SymbolLayout.masked(row, column);
      rows[row] |= (dark ? 1 : 0) << column;
    }
    return rows;
  }

  private static TagSymbol ofCodewords(int[] codewords) {
    int[] rows = ALIKE.clone();
    for (int bit = 0; bit < SymbolLayout.DATA_BITS; bit++) {
      int set = codewords[bit / 8] >> (7 - bit % 8) & 1;
      int module = SymbolLayout.dataModule(bit);
      rows[module / SIZE] ^= set << module % SIZE;
    }
    return new TagSymbol(rows);
  }

  private static int[] codewords(String digits) {
    CodewordWriter writer = new CodewordWriter(DATA_CODEWORDS);
    writer.put(NUMERIC, 4);
    writer.put(digits.length(), 10);
    for (int at = 0; at < digits.length(); at += 3) {
      String group = digits.substring(at, Math.min(at + 3, digits.length()));
      writer.put(Integer.parseInt(group), 1 + 3 * group.length());
    }
    int[] data = writer.codewords();
    int[] check = CHECK.errorCorrection(data);
    int[] all = new int[data.length + check.length];
    System.arraycopy(data, 0, all, 0, data.length);
    System.arraycopy(check, 0, all, data.length, check.length);
    return all;
  }
}
