package wherefrom.rules;

import java.util.Optional;
import wherefrom.engine.Layout;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Look;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/** What the rules need to know of a job. */
public interface Bench {
  Layout layout();

  /** Where a part is. The item must be one of the job's. */
  Whereabouts whereabouts(int item);

  /** Basket 4, or visit 2 at the machine shop: which one it is away to; empty when not away. */
  Optional<String> findAwayTo(int item);

  /** The part that is fitted at a place now. */
  Optional<Part> findFitted(Place place);

  /** The place that a part is fitted at now. */
  Optional<Place> findFittedAt(int item);

  /** The part that belongs at a place: the one that came out of it, or its replacement. */
  Optional<Part> findOwner(Place place);

  /** The part that replaced this one. */
  Optional<Part> findReplacement(int item);

  /** The worst answer that a look or a measurement gave. */
  Look worstLook(int item);

  Optional<Decision> findDecision(int item);

  /** The worst that was found after the latest decision; not looked, where nothing was. */
  Look worstSinceDecision(int item);

  /** Whether a part must have a decision before it is fitted. */
  boolean decisionsWanted();

  /** The rule that forbids the used part. */
  Optional<Ban> findBan(int item);

  /** What else stands against fitting the part, as an unanswered check, in a sentence. */
  Optional<String> findOpenCheck(int item);
}
