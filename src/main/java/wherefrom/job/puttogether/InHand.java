package wherefrom.job.puttogether;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Verdict;

/**
 * What waits or is stopped: a part, the spot that it is to go to, and the stop between the two.
 *
 * @param part the part that was scanned last
 * @param spot the spot that was scanned or tapped last
 * @param stop the stop that stands; its tag may have stood for no part
 * @param reason the number of the reason that is chosen for fitting on purpose; below 0 for none
 */
record InHand(Optional<Part> part, Optional<Spot> spot, Optional<Verdict> stop, int reason) {
  /** The number where no reason is chosen. */
  static final int NO_REASON = -1;

  /** Nothing waits. */
  static final InHand NOTHING =
      new InHand(Optional.empty(), Optional.empty(), Optional.empty(), NO_REASON);

  InHand with(Part scanned) {
    return new InHand(Optional.of(scanned), spot, stop, reason);
  }

  InHand at(Spot scanned) {
    return new InHand(part, Optional.of(scanned), stop, reason);
  }

  InHand stoppedBy(Verdict verdict) {
    return new InHand(part, spot, Optional.of(verdict), NO_REASON);
  }

  /** The thing in the hand is no part of this job: the next part takes its place. */
  InHand refusedBy(Verdict verdict) {
    return new InHand(Optional.empty(), spot, Optional.of(verdict), NO_REASON);
  }

  InHand withoutStop() {
    return new InHand(part, spot, Optional.empty(), reason);
  }

  InHand choosing(int index) {
    return new InHand(part, spot, stop, Math.floorMod(index, OnPurpose.REASONS.size()));
  }

  /** Whether a part or a place waits for its other half. */
  boolean isHalf() {
    return stop.isEmpty() && (part.isPresent() || spot.isPresent());
  }

  /** Whether a stop stands between a part and a spot. */
  boolean isStopped() {
    return stop.isPresent() && part.isPresent() && spot.isPresent();
  }

  /** Whether the stop can be overruled: never by a part of another kind, or one that is retired. */
  boolean canFitOnPurpose() {
    return isStopped()
        && stop.filter(Verdict::canBeOverruled).isPresent()
        && Place.canLive(part.orElseThrow().kind(), spot.orElseThrow());
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
