package wherefrom.text;

import java.util.List;

/**
 * Words to choose from, kept as they stand on their keys, and a key for words of the person's own.
 *
 * @param usual what is mostly said, in the order of the keys
 * @param own what stands on the key that asks for the person's own words
 */
public record UsualWords(List<String> usual, String own) {
  public UsualWords {
    usual = List.copyOf(usual);
  }

  /** The key for the person's own words says "other". */
  public static UsualWords orOther(String... usual) {
    return orOther(List.of(usual));
  }

  /** The key for the person's own words says "other". */
  public static UsualWords orOther(List<String> usual) {
    return new UsualWords(usual, "other");
  }
}
