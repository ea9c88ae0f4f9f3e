package wherefrom.ui.decide;

import java.util.List;
import wherefrom.inspection.Decision;

/** The usual reasons for a decision. */
enum DecideReason {
  EVERY_TEST_PASSED("every test passed"),
  MEASURED_GOOD("measured good"),
  GOOD_ENOUGH("good enough here"),
  CAN_BE_MACHINED("out of limit, can be machined"),
  ALIKE_AS_A_SET("all alike as a set"),
  A_TEST_FAILED("a test failed"),
  WORN("worn"),
  CRACKED("cracked"),
  OUT_OF_LIMIT("out of limit"),
  A_RULE_FORBIDS_IT("a rule forbids it"),
  REPLACED_AS_A_SET("replaced as a set"),
  CHEAPER("cheaper than machining");

  private final String words;

  DecideReason(String words) {
    this.words = words;
  }

  /** As it stands on its key and in the record. */
  String words() {
    return words;
  }

  /** The reasons for a decision. */
  static List<DecideReason> of(Decision decision) {
    return switch (decision) {
      case REUSE -> List.of(EVERY_TEST_PASSED, MEASURED_GOOD, GOOD_ENOUGH);
      case MACHINE -> List.of(CAN_BE_MACHINED, ALIKE_AS_A_SET);
      case REPLACE ->
          List.of(
              A_TEST_FAILED,
              OUT_OF_LIMIT,
              A_RULE_FORBIDS_IT,
              WORN,
              CRACKED,
              REPLACED_AS_A_SET,
              CHEAPER);
    };
  }

  /** Whether it says that something was measured. */
  boolean claimsReading() {
    return this == MEASURED_GOOD || this == CAN_BE_MACHINED || this == OUT_OF_LIMIT;
  }
}
