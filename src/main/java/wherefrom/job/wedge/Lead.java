package wherefrom.job.wedge;

import java.util.OptionalInt;

/**
 * What a scanner may type before a code: its own prefix, and the AIM identifier of ISO/IEC 15424,
 * which for QR codes is {@code ]Q0} to {@code ]Q3} (0 model 1, 1 model 2, 2 with ECI, 3 with FNC1
 * first). Other keyboard layouts garble the identifier; its last character is always a digit of the
 * code's own row, and its letter one of a few.
 */
final class Lead {
  /** The key of Q on the Latin and Cyrillic layouts of xkeyboard-config 2.35.1. */
  private static final String LETTERS = "qaй";

  /** The key of ] on those layouts. */
  private static final String FLAGS = "]+$')[*;@¨´¸đõðúäüöħơğъї";

  private static final int MOST_MODIFIER = 3;

  private final String prefix;

  Lead(String prefix) {
    this.prefix = prefix;
  }

  /** The index at which the lead of a code begins; the code's own start where there is none. */
  int start(Burst burst, DigitRow row, int codeStart) {
    int beforeIdentifier = identifierStart(burst, row, codeStart);
    int beforePrefix = prefixStart(burst, beforeIdentifier);
    return beforeIdentifier == codeStart ? identifierStart(burst, row, beforePrefix) : beforePrefix;
  }

  private int prefixStart(Burst burst, int end) {
    return burst.endsWith(prefix, end) ? end - prefix.codePointCount(0, prefix.length()) : end;
  }

  private static int identifierStart(Burst burst, DigitRow row, int end) {
    if (end < 2 || !isOf(LETTERS, burst.at(end - 2))) {
      return end;
    }
    OptionalInt modifier = row.digit(burst.at(end - 1));
    if (modifier.isEmpty() || modifier.getAsInt() > MOST_MODIFIER) {
      return end;
    }
    return end > 2 && isOf(FLAGS, burst.at(end - 3)) ? end - 3 : end - 2;
  }

  private static boolean isOf(String set, int codePoint) {
    return set.indexOf(Character.toLowerCase(codePoint)) >= 0;
  }
}
