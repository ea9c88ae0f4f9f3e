package wherefrom.job.puttogether;

import wherefrom.rules.Hold;
import wherefrom.rules.StandsAgainst;
import wherefrom.rules.Verdict;
import wherefrom.text.UsualWords;

/**
 * What is asked of somebody who fits a part against a stop, or leaves it in: why a part is good in
 * another place is not why one is good that was found bad.
 *
 * @param question asks why
 * @param reasons what is mostly said to that
 */
public record OnPurpose(String question, UsualWords reasons) {
  private static final String TRIAL = "trial fit only";

  private static final UsualWords ELSEWHERE =
      UsualWords.orOther("measured better here", "matched pair", "machined to suit");

  private static final UsualWords TURNED =
      UsualWords.orOther("it ran this way", "its mark is wrong", TRIAL);

  private static final UsualWords DOUBTED =
      UsualWords.orOther("looked again: good", "measured again: good", "until a new one comes");

  private static final UsualWords OPEN =
      UsualWords.orOther("done, not recorded", "checked another way", TRIAL);

  private static final UsualWords BEHIND = UsualWords.orOther("the record is behind", TRIAL);

  /** Of the stop that is to be overruled. */
  public static OnPurpose of(Verdict stop) {
    return stop instanceof Verdict.FittedBut fitted
        ? staying(fitted.against())
        : new OnPurpose(asked(stop), usual(stop));
  }

  /** Of a part that sits, and is to stay all the same. */
  public static OnPurpose staying(StandsAgainst against) {
    return new OnPurpose("Why does it stay?", usual(against));
  }

  private static String asked(Verdict stop) {
    return switch (stop.name()) {
      case NOT_CLEARED -> "Why does it go in?";
      case WRONG_END -> "Why this way round?";
      default -> "Why does it go here?";
    };
  }

  private static UsualWords usual(Verdict stop) {
    return switch (stop.name()) {
      case NOT_CLEARED -> stop instanceof Verdict.NotCleared held ? usual(held.hold()) : DOUBTED;
      case WRONG_END -> TURNED;
      default -> ELSEWHERE;
    };
  }

  private static UsualWords usual(Hold hold) {
    return switch (hold) {
      case TO_MACHINE, TO_REPLACE, FOUND_BAD, NOT_DECIDED -> DOUBTED;
      case WORK_OPEN, CHECK_OPEN -> OPEN;
      case WASHING, AT_SHOP, LOST -> BEHIND;
      case CAP_IN, HEAD_OFF, HEAD_AWAY, SHAFT_AWAY, CAP_AWAY, ROD_AWAY -> BEHIND;
    };
  }
}
