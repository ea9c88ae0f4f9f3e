package wherefrom.cli;

import java.util.Comparator;
import java.util.List;

/** What somebody meant who mistyped a name. */
final class Nearest {
  private static final int MOST_SLIPS = 2;

  private Nearest() {}

  /** {@code " Did you mean --job?"}, or nothing where no name is near. */
  static String question(String typed, List<String> names) {
    int most = Math.min(MOST_SLIPS, typed.length() / 3);
    return names.stream()
        .filter(name -> slips(typed, name) <= most)
        .min(Comparator.comparingInt(name -> slips(typed, name)))
        .map(name -> " Did you mean " + name + "?")
        .orElse("");
  }

  /** How many letters are too many, missing or wrong. */
  private static int slips(String typed, String name) {
    int[] row = new int[name.length() + 1];
    for (int j = 0; j <= name.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= typed.length(); i++) {
      int corner = row[0];
      row[0] = i;
      for (int j = 1; j <= name.length(); j++) {
        int wrong = corner + (typed.charAt(i - 1) == name.charAt(j - 1) ? 0 : 1);
        corner = row[j];
        row[j] = Math.min(wrong, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[name.length()];
  }
}
