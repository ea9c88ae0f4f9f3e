package wherefrom.rules;

import java.util.List;
import java.util.Optional;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.inspection.Decision;
import wherefrom.parts.BigPartAt;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/** What the rules need to know of a job. */
public interface JobFacts {
  Layout layout();

  /** Where a part is. The item must be one of the job's. */
  Whereabouts whereabouts(int item);

  /** The entry that brought a part where it is; 0 for one that never came out. */
  long movedAt(int item);

  /** Basket 4, or visit 2 at the machine shop: which one it is away to; empty when not away. */
  Optional<String> findAwayTo(int item);

  /** The part that is fitted at a place now. */
  Optional<Part> findFitted(Place place);

  /** The place that a part is fitted at now. */
  Optional<Place> findFittedAt(int item);

  /** The part that sits at a place: fitted, or never taken out. */
  Optional<Part> findSeated(Place place);

  /** The place that a part sits at: fitted there, or never taken out. */
  Optional<Place> findSeat(int item);

  /**
   * The part that belongs at a place as things sit now: the mate of what sits there, else owner.
   */
  Optional<Part> findRightful(Place place);

  /** The very part that this one was machined or worn in with, and goes where it goes. */
  Optional<Part> findLeader(int item);

  /** Whether a part is new and was never fitted. */
  boolean isUnrun(int item);

  /** Whether a new part is still to be fitted at a place. */
  boolean awaitsNew(Place place);

  /** The part in use that came in place of this one, over all that were replaced in between. */
  Optional<Part> findReplacement(int item);

  /** The worst answer that a look or a measurement gave. */
  Evidence worst(int item);

  Optional<Decision> findDecision(int item);

  /** The entry that decided; 0 where none did. */
  long decidedAt(int item);

  /** The worst that was found after the latest decision. */
  Evidence worstSinceDecision(int item);

  /** The entry from which on the job asks for a decision on every used part. */
  Optional<Long> decisionsAskedSince();

  /** The entry that gave a reason for a part to sit where it sits; 0 where none did. */
  long reasonGiven(int item);

  /** The entry that fitted a part turned, knowing it; 0 where none did. */
  long turnedAt(int item);

  /**
   * The head or rocker shaft that belongs to a spot, and where it is; empty where the job keeps no
   * such big part.
   */
  Optional<BigPartAt> findBigPart(BigPartKind kind, Spot spot);

  /** What stands against the part that sits in a place ({@link Objections#ofSeated}). */
  List<Objection> listAgainst(Place place);

  /** The rules that forbid the part at a place, the first reason first. */
  List<Ban> listBans(int item, Place place);

  /** The checks that the part waits for at a place. */
  List<OpenCheck> listOpenChecks(int item, Place place);
}
