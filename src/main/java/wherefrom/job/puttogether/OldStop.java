package wherefrom.job.puttogether;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.StopGiven;
import wherefrom.parts.Part;
import wherefrom.rules.LeftStanding;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictName;

/**
 * A stop that comes up again by itself: nobody has its part in the hand, or stands at its place.
 */
record OldStop(OpenJob job, Fitting fitting) {

  /** It is judged anew, for its words to be of today; it stands whatever comes of that. */
  InHand resume(StopGiven given) {
    Optional<Part> part = job.state().findPart(given.item()).map(PartRecord::part);
    Optional<Spot> spot = Spots.find(given.spot());
    boolean turned = given.word() == VerdictName.WRONG_END;
    Verdict verdict =
        part.flatMap(held -> spot.map(at -> fitting.judge(held, at, turned)))
            .filter(Verdict::stops)
            .orElseGet(() -> new LeftStanding(given.word(), given.sentence(), part, spot));
    return new InHand(
        part, spot, turned, Optional.of(verdict), InHand.NO_REASON, given.untagged(), true);
  }

  /** The one that waits and is so to this day, unless a fit that had ended it was taken back. */
  Optional<InHand> findLive(FitOutcome step) {
    boolean fit = step instanceof FitOutcome.TookBack back && back.isFit();
    return job.stops()
        .findWaiting()
        .filter(given -> !fit)
        .map(this::resume)
        .filter(it -> !(it.stop().orElseThrow() instanceof LeftStanding));
  }

  /** Whether it is of this part, and its place would say the same of that to this day. */
  boolean isOf(Part scanned, InHand hand) {
    return hand.old()
        && hand.isStopped()
        && hand.part().equals(Optional.of(scanned))
        && hand.stop().equals(Optional.of(fitting.judge(hand.attempt(MeantKind.ANY))));
  }
}
