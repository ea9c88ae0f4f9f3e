package wherefrom.parts;

import java.util.Optional;

/**
 * The sixteen digits of a tag: {@code type(1) engine(7) item(4) issue(2) check(2)}. As a QR symbol
 * (ISO/IEC 18004) they fit version 1 at error correction level H in numeric mode.
 *
 * @param type what the tag stands for
 * @param engine the job's number, 0 to 9,999,999; action cards carry 0 and serve every job
 * @param item 1 to 9,999, counted within the job and the type
 * @param issue 1 to 99; a reprinted tag counts one up
 */
public record TagCode(TagType type, int engine, int item, int issue) {
  public static final int LENGTH = 16;
  public static final int MOST_ENGINE = 9_999_999;
  public static final int MOST_ITEM = 9_999;
  public static final int MOST_ISSUE = 99;

  public TagCode {
    require(engine >= 0 && engine <= MOST_ENGINE, "engine", engine);
    require(item >= 1 && item <= MOST_ITEM, "item", item);
    require(issue >= 1 && issue <= MOST_ISSUE, "issue", issue);
  }

  private static void require(boolean holds, String field, int value) {
    if (!holds) {
      throw new IllegalArgumentException(field + " out of range: " + value);
    }
  }

  public String digits() {
    String body = Long.toString((front(type, engine) * 10_000 + item) * 100 + issue);
    return body + CheckDigits.of(body);
  }

  /** What a person types when the tag cannot be read: item and check, {@code 0173 88}. */
  public String typed() {
    String digits = digits();
    return digits.substring(8, 12) + " " + digits.substring(14);
  }

  /**
   * Whether tags of two engines have the same {@link #typed} codes: every tag of one the code of
   * the other's tag with the same item and issue, where both are of these types. The check digits
   * know an engine only by what it leaves when divided by 97.
   */
  public static boolean typedAlike(int engine, TagType type, int otherEngine, TagType otherType) {
    return CheckDigits.alike(front(type, engine), front(otherType, otherEngine));
  }

  private static long front(TagType type, int engine) {
    return type.digit() * 10_000_000L + engine;
  }

  /**
   * The tag with these sixteen digits; empty when they are not sixteen digits, do not agree with
   * their check digits, or name no type.
   */
  public static Optional<TagCode> find(String digits) {
    if (!isSixteenDigits(digits) || !CheckDigits.agree(digits)) {
      return Optional.empty();
    }
    int item = Integer.parseInt(digits.substring(8, 12));
    int issue = Integer.parseInt(digits.substring(12, 14));
    if (item < 1 || issue < 1) {
      return Optional.empty();
    }
    return TagType.find(digits.charAt(0) - '0')
        .map(type -> new TagCode(type, Integer.parseInt(digits.substring(1, 8)), item, issue));
  }

  /** Whether a text has a tag's form, whatever its check digits say. */
  public static boolean isSixteenDigits(String text) {
    boolean digits = text.length() == LENGTH;
    for (int at = 0; digits && at < LENGTH; at++) {
      digits = text.charAt(at) >= '0' && text.charAt(at) <= '9';
    }
    return digits;
  }
}
