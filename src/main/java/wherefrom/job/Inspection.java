package wherefrom.job;

import java.util.Optional;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.DecisionsAsked;
import wherefrom.job.entry.FeatureLooked;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.ReadingsTaken;
import wherefrom.job.entry.SetDecided;

/** Whether the parts of a job are looked into, and whether each of them wants a decision. */
public final class Inspection {
  private static final EntryFold<Inspection> READS =
      EntryFold.<Inspection>none()
          .on(LookRecorded.class, (it, look) -> it.begun = true)
          .on(FeatureLooked.class, (it, look) -> it.begun = true)
          .on(ReadingsTaken.class, (it, taken) -> it.begun = true)
          .on(DecisionMade.class, (it, made) -> it.begun = true)
          .on(SetDecided.class, (it, made) -> it.begun = true)
          .at(DecisionsAsked.class, Inspection::ask);

  private boolean begun;
  private Optional<Long> askedSince = Optional.empty();

  Inspection() {}

  /** As another is now; what changes in one of them later does not in the other. */
  Inspection(Inspection other) {
    begun = other.begun;
    askedSince = other.askedSince;
  }

  void apply(LoggedEntry logged) {
    READS.take(this, logged);
  }

  private void ask(DecisionsAsked asked, LoggedEntry logged) {
    askedSince = asked.everyPart() ? Optional.of(logged.sequence()) : Optional.empty();
  }

  /** From then on what a mere replacement or swap asks for binds, too. */
  public boolean isBegun() {
    return begun;
  }

  /** Whether the job asks for a decision on every used part before it goes back. */
  public boolean asksForAll() {
    return askedSince.isPresent();
  }

  /** The entry since which a decision is asked on every used part. */
  Optional<Long> askedSince() {
    return askedSince;
  }
}
