package wherefrom.logbook;

/**
 * The end of a file that holds no whole line, as a power failure leaves it.
 *
 * @param file the file's name
 * @param line the cut line, counted from 1
 * @param offset of its first byte
 * @param length in bytes
 */
record CutLine(String file, int line, int offset, int length) {

  /** For the person. */
  String sentence() {
    return "The last line of "
        + file
        + " was cut ("
        + length
        + " bytes from byte "
        + offset
        + "), as in a power failure. It stays there and does not count. Work goes on in"
        + " the next file. Check whether your last step is there. If not, do it again.";
  }
}
