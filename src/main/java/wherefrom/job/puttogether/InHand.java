package wherefrom.job.puttogether;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.job.OpenJob;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Attempt;
import wherefrom.rules.Verdict;

/**
 * What waits or is stopped: a part, the spot that it is to go to, and the stop between the two.
 *
 * @param part the part that was scanned last
 * @param spot the spot that was scanned or tapped last
 * @param turned whether the person said that the part would be in turned
 * @param stop the stop that stands; its tag may have stood for no part
 * @param reason the number of the reason that is chosen for fitting on purpose; below 0 for none
 */
record InHand(
    Optional<Part> part, Optional<Spot> spot, boolean turned, Optional<Verdict> stop, int reason) {
  /** The number where no reason is chosen. */
  static final int NO_REASON = -1;

  /** Nothing waits. */
  static final InHand NOTHING =
      new InHand(Optional.empty(), Optional.empty(), false, Optional.empty(), NO_REASON);

  InHand with(Part scanned) {
    return new InHand(Optional.of(scanned), spot, false, stop, reason);
  }

  InHand at(Spot scanned) {
    return new InHand(part, Optional.of(scanned), false, stop, reason);
  }

  InHand heldTurned(boolean now) {
    return new InHand(part, spot, now, stop, reason);
  }

  InHand stoppedBy(Verdict verdict) {
    return new InHand(part, spot, turned, Optional.of(verdict), NO_REASON);
  }

  /** The thing in the hand is no part of this job: the next part takes its place. */
  InHand refusedBy(Verdict verdict) {
    return new InHand(Optional.empty(), spot, false, Optional.of(verdict), NO_REASON);
  }

  InHand withoutStop() {
    return new InHand(part, spot, turned, Optional.empty(), reason);
  }

  InHand choosing(int index) {
    return new InHand(part, spot, turned, stop, Math.floorMod(index, OnPurpose.REASONS.size()));
  }

  /** The part's number; 0 where there is none, as of a tag that stood for none. */
  int item() {
    return part.map(Part::item).orElse(0);
  }

  /** How many of the stops that wait are not of what is in the hand. */
  int countOthers(OpenJob job) {
    boolean empty = part.isEmpty() && stop.isEmpty();
    int all = job.state().stops().waiting().size();
    return all - (empty ? 0 : job.stops().of(item()).size());
  }

  /** Whether a part or a place waits for its other half. */
  boolean isHalf() {
    return stop.isEmpty() && (part.isPresent() || spot.isPresent());
  }

  /** Whether a stop stands between a part and a spot. */
  boolean isStopped() {
    return stop.isPresent() && part.isPresent() && spot.isPresent();
  }

  /** The part at its spot, as it is held; only where both are there. */
  Attempt attempt(MeantKind wanted) {
    return new Attempt(
        part.orElseThrow(), spot.orElseThrow(), turned, wanted.kind(), wanted.pointed());
  }

  /** Where the part would be at its spot; only of one that can live there. */
  Place place() {
    return new Place(part.orElseThrow().kind(), spot.orElseThrow());
  }

  /** The reason that is chosen, in words. */
  Optional<String> findReason() {
    return reason < 0 ? Optional.empty() : Optional.of(OnPurpose.REASONS.get(reason));
  }
}
