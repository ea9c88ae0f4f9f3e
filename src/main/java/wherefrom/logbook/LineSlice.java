package wherefrom.logbook;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;

/** A stretch of a file up to a line end, or up to the end of the file. */
final class LineSlice {
  private static final int DIGITS = 9;

  private final int line;
  private final byte[] file;
  private final int from;
  private final int to;
  private final boolean ended;

  LineSlice(int line, byte[] file, int from, int to, boolean ended) {
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

  /** A copy of its bytes, without the line end. */
  byte[] bytes() {
    return Arrays.copyOfRange(file, from, to);
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
    return find(from + 1, LogLine.ENTRY_START) >= 0;
  }

  /** Whether these bytes stand anywhere in it. */
  boolean holds(byte[] some) {
    return find(from, some) >= 0;
  }

  /** The whole number of at most nine digits behind these bytes, where they stand first. */
  Optional<Integer> findNumber(byte[] some) {
    int found = find(from, some);
    int start = found + some.length;
    int end = start;
    while (found >= 0 && end < to && end - start < DIGITS && file[end] >= '0' && file[end] <= '9') {
      end++;
    }
    return found < 0 || end == start
        ? Optional.empty()
        : Optional.of(
            Integer.parseInt(new String(file, start, end - start, StandardCharsets.US_ASCII)));
  }

  private int find(int first, byte[] some) {
    for (int at = first; at + some.length <= to; at++) {
      if (file[at] == some[0] && Arrays.equals(file, at, at + some.length, some, 0, some.length)) {
        return at;
      }
    }
    return -1;
  }
}
