package wherefrom.logbook;

import java.util.Iterator;
import java.util.NoSuchElementException;

/** A file in pieces, one after the other; the last has no line end where the file ends without. */
final class Pieces implements Iterator<Piece> {
  private final byte[] file;
  private int from;
  private int line;

  Pieces(byte[] file) {
    this.file = file;
  }

  @Override
  public boolean hasNext() {
    return from < file.length;
  }

  @Override
  public Piece next() {
    if (!hasNext()) {
      throw new NoSuchElementException();
    }
    int to = from;
    while (to < file.length && file[to] != '\n') {
      to++;
    }
    line++;
    Piece piece = new Piece(line, file, from, to, to < file.length);
    from = to + 1;
    return piece;
  }
}
