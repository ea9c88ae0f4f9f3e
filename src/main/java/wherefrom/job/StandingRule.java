package wherefrom.job;

import java.util.Optional;
import wherefrom.inspection.Look;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.Effect;

/**
 * A consequence that stands in the job.
 *
 * @param sequence the entry that it follows from
 * @param binding whether it binds, or is only to be known
 * @param answer the answer to its check, given after the change
 */
public record StandingRule(
    Consequence consequence, long sequence, boolean binding, Optional<CheckAnswered> answer) {

  /** Whether its check is passed. */
  public boolean isPassed() {
    return answer.filter(given -> given.look() == Look.PASS).isPresent();
  }

  /** A check that nobody has passed yet. */
  public boolean isOpenCheck() {
    return consequence.effect().isCheck() && !isPassed();
  }

  /** Whether it forbids used parts now. */
  boolean bans() {
    boolean lifted = consequence.effect() == Effect.FORBIDDEN && isPassed();
    return binding && consequence.effect().bans() && !lifted;
  }

  boolean holds() {
    return binding && consequence.effect() == Effect.CHECK_FIRST && isOpenCheck();
  }
}
