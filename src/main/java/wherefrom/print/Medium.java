package wherefrom.print;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What sort of stock it is. */
enum Medium {
  /** A sheet of self-adhesive labels. */
  SHEET,
  /** Plain card to cut. */
  CARD,
  /** Hang tags, one a page. */
  TAG,
  /** Labels on a roll, one a page. */
  ROLL;

  String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  static Optional<Medium> find(String key) {
    return Arrays.stream(values()).filter(medium -> medium.key().equals(key)).findFirst();
  }
}
