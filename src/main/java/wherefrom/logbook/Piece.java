package wherefrom.logbook;

import java.util.Arrays;

/** A stretch of a file up to a line end, or up to the end of the file. */
final class Piece {
  private final int line;
  private final byte[] file;
  private final int from;
  private final int to;
  private final boolean ended;

  Piece(int line, byte[] file, int from, int to, boolean ended) {
    this.line = line;
    this.file = file;
    this.from = from;
    this.to = to;
    this.ended = ended;
  }

  /** Counted from 1. */
  int line() {
    return line;
  }

  /** Of its first byte in the file. */
  int offset() {
    return from;
  }

  /** In bytes, without the line end. */
  int length() {
    return to - from;
  }

  /** The file that it is a stretch of; not a copy. */
  byte[] file() {
    return file;
  }

  boolean isWhole() {
    return ended && LogLine.isSealed(file, from, to);
  }

  /** What the line after it must say of it. */
  String sum() {
    return Sums.chain(file, from, length());
  }

  /**
   * Whether an entry begins anywhere but at the start: then more than one line runs together here,
   * which no cut can do.
   */
  boolean holdsAnotherEntry() {
    return isFrom(from + 1, LogLine.ENTRY_START);
  }

  /** Whether these bytes stand anywhere in it. */
  boolean holds(byte[] some) {
    return isFrom(from, some);
  }

  private boolean isFrom(int first, byte[] some) {
    for (int at = first; at + some.length <= to; at++) {
      if (file[at] == some[0] && Arrays.equals(file, at, at + some.length, some, 0, some.length)) {
        return true;
      }
    }
    return false;
  }
}
