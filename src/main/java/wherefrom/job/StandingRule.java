package wherefrom.job;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import wherefrom.inspection.Look;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.Effect;

/**
 * A consequence that stands in the job.
 *
 * @param sequence the entry that it follows from
 * @param binding whether it binds, or is only to be known
 * @param individual the one part that it speaks of; 0 where it goes by place
 * @param answered the answer to its check, given after the change
 * @param settled what a look or a reading says in answer to its check
 */
public record StandingRule(
    Consequence consequence,
    long sequence,
    boolean binding,
    int individual,
    Optional<LoggedEntry> answered,
    Optional<CheckAnswered> settled) {

  /** The answer to its check. */
  public Optional<CheckAnswered> answer() {
    return answered.map(logged -> (CheckAnswered) logged.entry()).or(() -> settled);
  }

  /** Whether its check is passed. */
  public boolean isPassed() {
    return answer().filter(given -> given.look() == Look.PASS).isPresent();
  }

  /** A check that nobody has passed yet. */
  public boolean isOpenCheck() {
    return consequence.effect().isCheck() && !isPassed();
  }

  /** The entry from which on it stands as it does: the change, or the answer that was no pass. */
  long since() {
    return answered.map(LoggedEntry::sequence).orElse(sequence);
  }

  /** This and another that one answer settles: what the later says, at the places of both. */
  StandingRule together(StandingRule other) {
    StandingRule later = sequence > other.sequence ? this : other;
    Set<Place> places = new LinkedHashSet<>(consequence.places());
    places.addAll(other.consequence.places());
    return new StandingRule(
        later.consequence.at(places),
        later.sequence,
        binding || other.binding,
        individual,
        later.answered,
        later.settled);
  }

  /** Whether it forbids parts now. */
  public boolean bans() {
    boolean lifted = consequence.effect() == Effect.FORBIDDEN && isPassed();
    return binding && consequence.effect().bans() && !lifted;
  }

  boolean holds() {
    return binding && consequence.effect() == Effect.CHECK_FIRST && isOpenCheck();
  }

  /** Whether it speaks of a part at a place. */
  boolean concerns(Part part, Place place) {
    if (individual > 0) {
      return part.item() == individual;
    }
    Place asked = consequence.cause().isOfItsOwnParts() ? part.home() : place;
    return consequence.places().contains(asked);
  }
}
