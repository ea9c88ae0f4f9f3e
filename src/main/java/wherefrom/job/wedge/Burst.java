package wherefrom.job.wedge;

import java.util.List;

/** Characters in the order they came, with their times. */
record Burst(List<Key> keys) {

  /** One typed character and when it came, in milliseconds of the caller's clock. */
  record Key(int codePoint, long atMs) {}

  Burst {
    keys = List.copyOf(keys);
  }

  int size() {
    return keys.size();
  }

  int at(int index) {
    return keys.get(index).codePoint();
  }

  /** The characters from one index to before another. */
  String text(int from, int to) {
    StringBuilder text = new StringBuilder();
    for (Key key : keys.subList(from, to)) {
      text.appendCodePoint(key.codePoint());
    }
    return text.toString();
  }

  /** Milliseconds between a character and the one before it. */
  long gap(int index) {
    return keys.get(index).atMs() - keys.get(index - 1).atMs();
  }

  /** The mean gap inside a stretch; 0 for a single character. */
  double meanGap(int from, int to) {
    if (to - from < 2) {
      return 0;
    }
    return (keys.get(to - 1).atMs() - keys.get(from).atMs()) / (double) (to - from - 1);
  }

  /** The longest gap inside a stretch; 0 for a single character. */
  long longestGap(int from, int to) {
    long longest = 0;
    for (int index = from + 1; index < to; index++) {
      longest = Math.max(longest, gap(index));
    }
    return longest;
  }

  /** Whether the text of a stretch's end is the given one, whatever its case. */
  boolean endsWith(String ending, int end) {
    int from = end - ending.codePointCount(0, ending.length());
    return from >= 0 && text(from, end).equalsIgnoreCase(ending);
  }
}
