package wherefrom.ui.decide;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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
  CHEAPER("cheaper than machining"),
  /** Wants words of the person's own. */
  OTHER("other");

  private final String words;

  DecideReason(String words) {
    this.words = words;
  }

  /** As it stands on its key and in the record. */
  String words() {
    return words;
  }

  /** The reasons for a decision; the last one wants words of the person's own. */
  static List<DecideReason> of(Decision decision) {
    return switch (decision) {
      case REUSE -> List.of(EVERY_TEST_PASSED, MEASURED_GOOD, GOOD_ENOUGH, OTHER);
      case MACHINE -> List.of(CAN_BE_MACHINED, ALIKE_AS_A_SET, OTHER);
      case REPLACE ->
          List.of(
              A_TEST_FAILED,
              OUT_OF_LIMIT,
              A_RULE_FORBIDS_IT,
              WORN,
              CRACKED,
              REPLACED_AS_A_SET,
              CHEAPER,
              OTHER);
    };
  }

  /** The reason of this key; empty of a person's own words and of what rules say. */
  static Optional<DecideReason> find(String words) {
    return Arrays.stream(values()).filter(reason -> reason.words.equals(words)).findFirst();
  }

  /** Whether it says that something was measured. */
  boolean claimsReading() {
    return this == MEASURED_GOOD || this == CAN_BE_MACHINED || this == OUT_OF_LIMIT;
  }
}
