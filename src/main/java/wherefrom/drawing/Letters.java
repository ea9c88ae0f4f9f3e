package wherefrom.drawing;

/** How wide the few words of a drawing are: advance widths of B612, of 2000 units. */
final class Letters {
  /** Height of a capital as a part of the size. */
  static final double CAPITAL = 0.75;

  private static final double UNITS = 2000;
  private static final int DIGIT = 1300;
  private static final int CAPITAL_M = 1800;
  private static final int OTHER_CAPITAL = 1350;
  private static final int SPACE = 700;

  /** From a to z, regular; bold ones are a tenth wider. */
  private static final int[] SMALL = {
    1050, 1200, 1000, 1200, 1100, 800, 1200, 1200, 600, 600, 1100, 700, 1800, 1200, 1200, 1200,
    1200, 800, 900, 800, 1200, 1100, 1500, 1100, 1100, 1000
  };

  private static final double BOLD = 1.1;

  private Letters() {}

  /** The width of words; that of capitals is a common one. */
  static double width(String text, double size, boolean bold) {
    return text.chars().mapToDouble(letter -> units(letter, bold)).sum() * size / UNITS;
  }

  private static double units(int letter, boolean bold) {
    if (letter >= 'a' && letter <= 'z') {
      return SMALL[letter - 'a'] * (bold ? BOLD : 1);
    }
    if (letter == 'M') {
      return CAPITAL_M;
    }
    if (letter == ' ') {
      return SPACE;
    }
    return letter >= '0' && letter <= '9' ? DIGIT : OTHER_CAPITAL;
  }
}
