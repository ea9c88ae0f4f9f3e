package wherefrom.job;

import java.util.Optional;
import wherefrom.job.entry.DecisionEntry;

/** The latest decision about a part, made about it alone or about its set. */
public final class LastDecision {
  private LastDecision() {}

  /** The decision that stands; empty where nobody decided. */
  public static Optional<DecisionEntry> find(EngineJob job, int item) {
    Optional<DecisionEntry> last = Optional.empty();
    for (LoggedEntry logged : job.standing()) {
      if (logged.entry() instanceof DecisionEntry made && made.items().contains(item)) {
        last = Optional.of(made);
      }
    }
    return last;
  }
}
