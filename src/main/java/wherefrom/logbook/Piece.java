package wherefrom.logbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A stretch of a file up to a line end, or up to the end of the file. */
final class Piece {
  /** No line of a logbook is so short; after so many that are, the rest is one broken piece. */
  private static final int SHORTEST = 40;

  private static final int MOST_SCRAPS = 100_000;

  private final int line;
  private final int offset;
  private final byte[] bytes;
  private final boolean ended;

  private Piece(int line, int offset, byte[] bytes, boolean ended) {
    this.line = line;
    this.offset = offset;
    this.bytes = bytes;
    this.ended = ended;
  }

  /** Counted from 1. */
  int line() {
    return line;
  }

  /** Of its first byte in the file. */
  int offset() {
    return offset;
  }

  /** What it holds, without the line end; not a copy. */
  byte[] bytes() {
    return bytes;
  }

  /** Whether its line end is there. */
  boolean ended() {
    return ended;
  }

  /** A file in pieces; the last one has no line end where the file does not end with one. */
  static List<Piece> split(byte[] file) {
    List<Piece> pieces = new ArrayList<>();
    int start = 0;
    int scraps = 0;
    for (int at = 0; at < file.length && scraps < MOST_SCRAPS; at++) {
      if (file[at] == '\n') {
        scraps += at - start < SHORTEST ? 1 : 0;
        pieces.add(of(pieces.size() + 1, file, start, at, true));
        start = at + 1;
      }
    }
    if (start < file.length) {
      pieces.add(of(pieces.size() + 1, file, start, file.length, false));
    }
    return pieces;
  }

  private static Piece of(int line, byte[] file, int from, int to, boolean ended) {
    return new Piece(line, from, Arrays.copyOfRange(file, from, to), ended);
  }

  boolean isWhole() {
    return ended && LogLine.isSealed(bytes);
  }

  /**
   * Whether an entry begins anywhere but at the start: then more than one line runs together here,
   * which no cut can do.
   */
  boolean holdsAnotherEntry() {
    byte[] start = LogLine.ENTRY_START;
    for (int at = 1; at + start.length <= bytes.length; at++) {
      if (Arrays.equals(bytes, at, at + start.length, start, 0, start.length)) {
        return true;
      }
    }
    return false;
  }
}
