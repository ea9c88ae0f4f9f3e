package wherefrom.cli;

import java.io.BufferedReader;
import java.io.IOException;

/** Lines of standard input, however long somebody makes them. */
final class Lines {
  /** No code and no reading is longer, in letters; what stands behind is passed over. */
  static final int MOST_LETTERS = 1_000;

  private static final int END = -1;

  private final BufferedReader in;
  private boolean ended;

  Lines(BufferedReader in) {
    this.in = in;
  }

  /** Whether there is another line. */
  boolean hasNext() throws IOException {
    in.mark(1);
    ended = ended || in.read() == END;
    if (!ended) {
      in.reset();
    }
    return !ended;
  }

  /** The next line without its end; of one that is too long, its beginning with a mark. */
  String next() throws IOException {
    StringBuilder line = new StringBuilder();
    int letter = in.read();
    while (letter != END && letter != '\n') {
      if (line.length() < MOST_LETTERS) {
        line.append((char) letter);
      } else if (line.length() == MOST_LETTERS) {
        line.append('…');
      }
      letter = in.read();
    }
    int last = line.length() - 1;
    if (last >= 0 && line.charAt(last) == '\r') {
      line.setLength(last);
    }
    return line.toString();
  }
}
