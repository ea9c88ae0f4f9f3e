package wherefrom.parts;

import java.util.Arrays;
import java.util.Optional;

/** What a tag stands for; its digit is the first of the sixteen. */
public enum TagType {
  PART(1, "part"),
  PLACE_CARD(2, "place card"),
  ACTION_CARD(3, "action card"),
  BASKET(4, "basket"),
  BAG(5, "bag"),
  BIG_PART(6, "big part");

  private final int digit;
  private final String word;

  TagType(int digit, String word) {
    this.digit = digit;
    this.word = word;
  }

  public int digit() {
    return digit;
  }

  public String word() {
    return word;
  }

  static Optional<TagType> find(int digit) {
    return Arrays.stream(values()).filter(type -> type.digit == digit).findFirst();
  }
}
