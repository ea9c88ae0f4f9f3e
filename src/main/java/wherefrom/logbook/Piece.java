package wherefrom.logbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A stretch of a file up to a line end, or up to the end of the file.
 *
 * @param line counted from 1
 * @param offset of its first byte
 * @param ended whether its line end is there
 */
record Piece(int line, int offset, byte[] bytes, boolean ended) {

  /** A file in pieces; the last one has no line end where the file does not end with one. */
  static List<Piece> split(byte[] file) {
    List<Piece> pieces = new ArrayList<>();
    int start = 0;
    for (int at = 0; at < file.length; at++) {
      if (file[at] == '\n') {
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
