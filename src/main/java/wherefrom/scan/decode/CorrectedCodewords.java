package wherefrom.scan.decode;

/** Codewords that agree with their error correction, and what it took. */
final class CorrectedCodewords {
  private final int[] codewords;
  private final int errors;

  CorrectedCodewords(int[] codewords, int errors) {
    this.codewords = codewords.clone();
    this.errors = errors;
  }

  int[] codewords() {
    return codewords.clone();
  }

  /** Places that were wrong without having been erased. */
  int errors() {
    return errors;
  }
}
