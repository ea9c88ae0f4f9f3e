package wherefrom.logbook;

import java.util.Iterator;
import java.util.NoSuchElementException;

/**
 * A file in pieces, one after the other; the last has no line end where the file ends without. A
 * file of nothing but scraps is not cut to the end: its rest is one piece.
 */
final class Pieces implements Iterator<LineSlice> {
  /** No line of a logbook is so short; after so many that are, the rest is one broken piece. */
  private static final int SHORTEST = 40;

  private static final int MOST_SCRAPS = 100_000;

  private final byte[] file;
  private int from;
  private int line;
  private int scraps;

  Pieces(byte[] file) {
    this.file = file;
  }

  @Override
  public boolean hasNext() {
    return from < file.length;
  }

  @Override
  public LineSlice next() {
    if (!hasNext()) {
      throw new NoSuchElementException();
    }
    int to = end();
    scraps += to - from < SHORTEST ? 1 : 0;
    line++;
    LineSlice piece = new LineSlice(line, file, from, to, to < file.length);
    from = to + 1;
    return piece;
  }

  private int end() {
    if (scraps >= MOST_SCRAPS) {
      return file.length;
    }
    int to = from;
    while (to < file.length && file[to] != '\n') {
      to++;
    }
    return to;
  }
}
