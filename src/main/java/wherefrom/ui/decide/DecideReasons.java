package wherefrom.ui.decide;

import java.util.List;
import wherefrom.inspection.Decision;

/** The usual reasons for a decision; the last one wants words of the person's own. */
final class DecideReasons {
  /** What the job's own record must bear out. */
  static final String EVERY_TEST_PASSED = "every test passed";

  static final String A_TEST_FAILED = "a test failed";
  static final String A_RULE_FORBIDS_IT = "a rule forbids it";

  private static final String OTHER = "other";

  private DecideReasons() {}

  static List<String> of(Decision decision) {
    return switch (decision) {
      case REUSE -> List.of(EVERY_TEST_PASSED, "measured good", "good enough here", OTHER);
      case MACHINE -> List.of("out of limit, can be machined", "all alike as a set", OTHER);
      case REPLACE ->
          List.of(
              A_TEST_FAILED,
              "out of limit",
              A_RULE_FORBIDS_IT,
              "replaced as a set",
              "cheaper than machining",
              OTHER);
    };
  }
}
