package wherefrom.logbook;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;

/**
 * Times as they stand in a line, such as {@code 2026-03-01T12:00:00.123456789Z}. Read figure by
 * figure, as the general way takes a third of the time that a long logbook takes to open.
 */
final class Times {
  private static final String SHAPE = "0000-00-00T00:00:00";
  private static final int DIGITS = 9;

  private Times() {}

  /**
   * The same as {@link Instant#parse}.
   *
   * @throws java.time.DateTimeException when it is no time
   */
  static Instant parse(String text) {
    return isUsual(text) ? usual(text) : Instant.parse(text);
  }

  private static boolean isUsual(String text) {
    return hasUsualLength(text) && text.endsWith("Z") && isOfDigits(text) && isOfADay(text);
  }

  /** Whole seconds, or a point and up to nine digits of them. */
  private static boolean hasUsualLength(String text) {
    int more = text.length() - SHAPE.length() - 1;
    return more == 0 || (more >= 2 && more <= DIGITS + 1 && text.charAt(SHAPE.length()) == '.');
  }

  private static boolean isOfDigits(String text) {
    for (int at = 0; at < text.length() - 1; at++) {
      char wanted = at < SHAPE.length() ? SHAPE.charAt(at) : '0';
      boolean fits = wanted == '0' ? isDigit(text.charAt(at)) : text.charAt(at) == wanted;
      if (!fits && at != SHAPE.length()) {
        return false;
      }
    }
    return true;
  }

  /** The end of a day as 24:00 and leap seconds are for those who know them. */
  private static boolean isOfADay(String text) {
    return number(text, 11, 13) < 24 && number(text, 17, 19) < 60;
  }

  private static Instant usual(String text) {
    LocalDateTime time =
        LocalDateTime.of(
            number(text, 0, 4),
            number(text, 5, 7),
            number(text, 8, 10),
            number(text, 11, 13),
            number(text, 14, 16),
            number(text, 17, 19));
    return Instant.ofEpochSecond(time.toEpochSecond(ZoneOffset.UTC), nanos(text));
  }

  private static int nanos(String text) {
    int nanos = 0;
    for (int digit = 0; digit < DIGITS; digit++) {
      int at = SHAPE.length() + 1 + digit;
      nanos = nanos * 10 + (at < text.length() - 1 ? text.charAt(at) - '0' : 0);
    }
    return nanos;
  }

  private static int number(String text, int from, int to) {
    int number = 0;
    for (int at = from; at < to; at++) {
      number = number * 10 + text.charAt(at) - '0';
    }
    return number;
  }

  private static boolean isDigit(char letter) {
    return letter >= '0' && letter <= '9';
  }
}
