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
 * @param reason why it is to be fitted on purpose, as chosen; empty for nothing chosen
 * @param untagged whether the part has no tag, and is what a person says
 * @param old whether the stop came up again by itself: nobody is at its place, or holds its part
 */
record InHand(
    Optional<Part> part,
    Optional<Spot> spot,
    boolean turned,
    Optional<Verdict> stop,
    String reason,
    boolean untagged,
    boolean old) {
  /** Where no reason is chosen. */
  static final String NO_REASON = "";

  /** Nothing waits. */
  static final InHand NOTHING =
      new InHand(
          Optional.empty(), Optional.empty(), false, Optional.empty(), NO_REASON, false, false);

  /** The part whose tag was scanned. */
  InHand with(Part scanned) {
    return new InHand(Optional.of(scanned), spot, false, stop, reason, false, false);
  }

  /** A part without a tag, as a person knows it. */
  InHand withUntagged(Part known) {
    return new InHand(Optional.of(known), spot, false, stop, reason, true, false);
  }

  /** Nothing but its part. */
  InHand partAlone() {
    return new InHand(part, Optional.empty(), false, Optional.empty(), NO_REASON, untagged, false);
  }

  InHand at(Spot scanned) {
    return new InHand(part, Optional.of(scanned), false, stop, reason, untagged, false);
  }

  InHand heldTurned(boolean now) {
    return new InHand(part, spot, now, stop, reason, untagged, old);
  }

  InHand stoppedBy(Verdict verdict) {
    return new InHand(part, spot, turned, Optional.of(verdict), NO_REASON, untagged, false);
  }

  /** The thing in the hand is no part of this job: the next part takes its place. */
  InHand refusedBy(Verdict verdict) {
    return new InHand(Optional.empty(), spot, false, Optional.of(verdict), NO_REASON, false, false);
  }

  InHand withoutStop() {
    return new InHand(part, spot, turned, Optional.empty(), reason, untagged, old);
  }

  /**
   * @param why the reason, or {@link #NO_REASON}
   */
  InHand choosing(String why) {
    return new InHand(part, spot, turned, stop, why, untagged, old);
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
        part.orElseThrow(), spot.orElseThrow(), turned, wanted.kind(), wanted.pointed(), untagged);
  }

  /** Where the part would be at its spot; only of one that can live there. */
  Place place() {
    return new Place(part.orElseThrow().kind(), spot.orElseThrow());
  }

  /** The reason that is chosen, in words. */
  Optional<String> findReason() {
    return Optional.of(reason).filter(why -> !why.isEmpty());
  }
}
