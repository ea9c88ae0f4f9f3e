package wherefrom.parts;

/** Packs numbers of a few bits each into codewords of eight bits, highest bit first. */
final class CodewordWriter {
  private final int[] codewords;
  private int length;

  CodewordWriter(int count) {
    codewords = new int[count];
  }

  void put(int value, int bits) {
    for (int bit = bits - 1; bit >= 0; bit--) {
      codewords[length / 8] |= (value >> bit & 1) << (7 - length % 8);
      length++;
    }
  }

  /** All codewords; what was not written is zero, as the terminator is. */
  int[] codewords() {
    return codewords.clone();
  }
}
