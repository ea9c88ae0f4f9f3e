package wherefrom.job.puttogether;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Verdict;

/**
 * A part and a place, in whichever order they come: the first waits for the other, and the two are
 * judged.
 */
final class ScannedHalves {
  private final OpenJob job;
  private final Judging judging;
  private final FollowedList list;
  private Optional<Place> pointed = Optional.empty();

  ScannedHalves(OpenJob job, Judging judging, FollowedList list) {
    this.job = job;
    this.judging = judging;
    this.list = list;
  }

  /** The place that was tapped with the kind that lives there; empty where a card was scanned. */
  void point(Optional<Place> tapped) {
    pointed = tapped;
  }

  /** A part without a tag: a person says which it is. */
  FitOutcome takeUntagged(FitMode mode, PartRecord known) {
    return take(mode, known, true);
  }

  FitOutcome take(FitMode mode, PartRecord scanned) {
    return take(mode, scanned, false);
  }

  private FitOutcome take(FitMode mode, PartRecord scanned, boolean untagged) {
    if (mode == FitMode.WHERE_DOES_THIS_GO) {
      return new FitOutcome.Shown(scanned, WhereTo.words(job.state(), scanned.part()));
    }
    if (judging.holdsOld(scanned.part())) {
      return new FitOutcome.Judged(hand().stop().orElseThrow());
    }
    leaveOld();
    boolean replaced = hand().part().filter(part -> !part.equals(scanned.part())).isPresent();
    judging.take(scanned.part(), untagged);
    if (hand().spot().isEmpty() && mode == FitMode.FOLLOW_THE_LIST) {
      list.target().ifPresent(place -> judging.take(place.spot()));
    }
    if (hand().spot().isPresent()) {
      return judge(mode, false);
    }
    judging.answerTags();
    return new FitOutcome.WaitingForSpot(scanned, replaced);
  }

  /**
   * @param last what was answered before: a part that is shown is held against the spot
   */
  FitOutcome take(FitMode mode, Spot scanned, FitOutcome last) {
    if (mode == FitMode.WHERE_DOES_THIS_GO) {
      return last instanceof FitOutcome.Shown shown
          ? judging.tried(shown.part(), scanned)
          : new FitOutcome.Said(WhereTo.words(job.state(), scanned));
    }
    leaveOld();
    boolean replaced = hand().spot().filter(spot -> !spot.equals(scanned)).isPresent();
    judging.take(scanned);
    if (hand().part().isPresent()) {
      return judge(mode, false);
    }
    Optional<Verdict> stop = hand().stop();
    return stop.<FitOutcome>map(FitOutcome.Judged::new)
        .orElseGet(() -> new FitOutcome.WaitingForPart(scanned, replaced));
  }

  /** A stop of before waits on: what is scanned now is judged at no place that nobody named now. */
  private void leaveOld() {
    if (hand().old()) {
      judging.drop();
    }
  }

  /** A part that is recorded as fitted is in the hand: it is out again, and waits for its place. */
  FitOutcome hold(Part part) {
    job.inOne(
        () -> {
          if (job.state().findFittedAt(part.item()).isPresent()) {
            job.record(new PartUnfitted(part.item(), "it was in the hand"));
          }
        });
    boolean untagged = hand().untagged();
    judging.drop();
    judging.take(part, untagged);
    return new FitOutcome.WaitingForSpot(job.state().getPart(part.item()), false);
  }

  /** What was right went in turned: it is in the hand again, and judged so. */
  FitOutcome turned(FitMode mode, Verdict.RightPlace right) {
    judging.takeBack(right);
    return judge(mode, true);
  }

  FitOutcome judge(FitMode mode, boolean turned) {
    return new FitOutcome.Judged(judging.fit(turned, wanted(mode)));
  }

  /** Where a place was tapped or the list names the spot, that names the kind, too. */
  MeantKind wanted(FitMode mode) {
    boolean listed = mode == FitMode.FOLLOW_THE_LIST;
    return MeantKind.at(hand().spot(), pointed, listed ? list.target() : Optional.empty());
  }

  private InHand hand() {
    return judging.hand();
  }
}
