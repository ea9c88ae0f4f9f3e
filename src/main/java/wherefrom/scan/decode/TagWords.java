package wherefrom.scan.decode;

import java.util.Locale;
import wherefrom.parts.SymbolLayout;
import wherefrom.parts.TagSymbol;

/**
 * The symbols of sixteen digits as a linear code: the data modules of {@code 000…0}, and for each
 * of the 54 bits of the digits the modules that change with it. A symbol is four numbers of 64
 * bits, one bit for each data module in the order of the codewords' bits, 1 for dark.
 */
final class TagWords {
  /** Bits of sixteen digits in numeric mode: five groups of three in ten, the last one in four. */
  static final int BITS = 54;

  /** Numbers of 64 bits in a symbol. */
  static final int LONGS = 4;

  /** Mode and length stand before the digits (ISO/IEC 18004, numeric mode, version 1). */
  private static final int BEFORE = 14;

  private static final String ZEROS = "0".repeat(16);
  private static final long[] ZERO = modules(ZEROS);
  private static final long[][] CHANGES = changes();

  private TagWords() {}

  /** The symbol of sixteen zeros; a copy. */
  static long[] zero() {
    return ZERO.clone();
  }

  /** What each bit changes, the first bit of the first digits first; a copy. */
  static long[][] changeList() {
    long[][] copy = new long[BITS][];
    for (int bit = 0; bit < BITS; bit++) {
      copy[bit] = CHANGES[bit].clone();
    }
    return copy;
  }

  static boolean isSet(long[] word, int bit) {
    return (word[bit / 64] >>> bit % 64 & 1) != 0;
  }

  /** Turns over in one word what is set in another. */
  static void turn(long[] word, long[] by) {
    for (int at = 0; at < LONGS; at++) {
      word[at] ^= by[at];
    }
  }

  /** The codewords of a symbol, its mask taken off. */
  static int[] codewords(long[] word) {
    int[] codewords = new int[TagSymbol.DATA_CODEWORDS + TagSymbol.ERROR_CORRECTION_CODEWORDS];
    for (int bit = 0; bit < SymbolLayout.DATA_BITS; bit++) {
      int module = SymbolLayout.dataModule(bit);
      boolean masked = SymbolLayout.masked(module / SymbolLayout.SIZE, module % SymbolLayout.SIZE);
      codewords[bit / 8] |= isSet(word, bit) == masked ? 0 : 0x80 >> bit % 8;
    }
    return codewords;
  }

  private static long[] modules(String digits) {
    TagSymbol symbol = TagSymbol.ofDigits(digits);
    long[] word = new long[LONGS];
    for (int bit = 0; bit < SymbolLayout.DATA_BITS; bit++) {
      int module = SymbolLayout.dataModule(bit);
      if (symbol.dark(module / SymbolLayout.SIZE, module % SymbolLayout.SIZE)) {
        word[bit / 64] |= 1L << bit % 64;
      }
    }
    return word;
  }

  private static long[][] changes() {
    long[][] changes = new long[BITS][];
    for (int bit = 0; bit < BITS; bit++) {
      boolean last = bit >= 50;
      int group = bit / 10;
      int value = last ? 8 >> (bit - 50) : 512 >> (bit % 10);
      String digits = last ? String.valueOf(value) : String.format(Locale.ROOT, "%03d", value);
      String before = ZEROS.substring(0, 3 * group);
      changes[bit] = modules(before + digits + ZEROS.substring(before.length() + digits.length()));
      turn(changes[bit], ZERO);
      if (!isSet(changes[bit], BEFORE + bit)) {
        throw new IllegalStateException("the digits do not stand where they should");
      }
    }
    return changes;
  }
}
