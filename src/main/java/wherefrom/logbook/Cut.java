package wherefrom.logbook;

/**
 * The end of a file that holds no whole line, as a power failure leaves it.
 *
 * @param file the file's name
 * @param line the cut line, counted from 1
 * @param offset of its first byte
 * @param length in bytes
 */
record Cut(String file, int line, int offset, int length) {

  /** For the person. */
  String sentence() {
    return "The last line of "
        + file
        + " was cut ("
        + length
        + " bytes from byte "
        + offset
        + "), as by a power failure. It is left where it is and does not count; work goes on in the"
        + " next file. Look whether your last step is there; if not, do it again.";
  }
}
