package wherefrom.parts;

/** How people mistype figures: one digit is another, or two neighbors are swapped. */
public final class Mistyping {
  private Mistyping() {}

  /** Whether one of two rows of digits comes of the other by a single slip. */
  public static boolean isOne(String one, String other) {
    if (one.length() != other.length()) {
      return false;
    }
    int first = difference(one, other, 0);
    int second = difference(one, other, first + 1);
    if (first == one.length() || second == one.length()) {
      return first < one.length();
    }
    boolean last = difference(one, other, second + 1) == one.length();
    return last && second == first + 1 && isSwapped(one, other, first);
  }

  private static boolean isSwapped(String one, String other, int at) {
    return one.charAt(at) == other.charAt(at + 1) && one.charAt(at + 1) == other.charAt(at);
  }

  /** Where they differ first from a place on; their length where they do not. */
  private static int difference(String one, String other, int from) {
    int at = from;
    while (at < one.length() && one.charAt(at) == other.charAt(at)) {
      at++;
    }
    return Math.min(at, one.length());
  }
}
