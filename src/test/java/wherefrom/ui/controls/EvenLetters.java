package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.List;

/** Letters of one width, a pixel each. */
final class EvenLetters {
  private EvenLetters() {}

  /** Behind the last letter of each line that words are wrapped into. */
  static List<Integer> ends(String words, double width) {
    List<Integer> ends = new ArrayList<>();
    int used = 0;
    int at = 0;
    for (String word : words.split("(?<= )", -1)) {
      if (used > 0 && used + word.stripTrailing().length() > width) {
        ends.add(at);
        used = 0;
      }
      used += word.length();
      at += word.length();
    }
    ends.add(at);
    return ends;
  }
}
