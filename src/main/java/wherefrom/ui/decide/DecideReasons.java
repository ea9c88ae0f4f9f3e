package wherefrom.ui.decide;

import java.util.List;
import java.util.Locale;
import wherefrom.inspection.Decision;

/** The usual reasons for a decision; the last one wants words of the person's own. */
final class DecideReasons {
  private static final String OTHER = "other";

  private DecideReasons() {}

  static List<String> of(Decision decision) {
    return switch (decision) {
      case REUSE -> List.of("every test passed", "measured good", "good enough here", OTHER);
      case MACHINE -> List.of("out of limit, can be machined", "all alike as a set", OTHER);
      case REPLACE ->
          List.of(
              "a test failed",
              "out of limit",
              "a rule forbids it",
              "replaced as a set",
              "cheaper than machining",
              OTHER);
    };
  }

  static String capital(String word) {
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }
}
