package wherefrom.inspection.measure;

import wherefrom.inspection.Look;
import wherefrom.workings.ResultValue;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

/**
 * A result held against its limit.
 *
 * @param probability the chance that the true value lies within the limit, 0 to 1; 0 where it is
 *     not known
 */
public record Judgement(ResultValue value, Limit limit, Ruling decision, double probability) {

  /** As an answer of a look: undecided is suspect. */
  public Look look() {
    return switch (decision) {
      case ACCEPT -> Look.PASS;
      case UNDECIDED -> Look.SUSPECT;
      case REJECT -> Look.FAIL;
    };
  }

  public String sentence() {
    return value.words() + " " + value.text() + ", " + ruling();
  }

  /** The sentence without the result: {@code limit 0.0010–0.0030 in: accept.} */
  public String ruling() {
    String what = "limit " + limit.words() + ": " + word() + ".";
    return decision == Ruling.UNDECIDED
        ? what + " Use a better tool, ask a second person, or the machine shop."
        : what;
  }

  /** {@code accept}, {@code undecided} or {@code reject}. */
  public String word() {
    return switch (decision) {
      case ACCEPT -> "accept";
      case UNDECIDED -> "undecided";
      case REJECT -> "reject";
    };
  }
}
