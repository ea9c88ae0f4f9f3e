package wherefrom.job.puttogether;

import java.util.Optional;
import java.util.function.Function;
import wherefrom.engine.Spot;
import wherefrom.job.LoggedEntry;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.PartFitted;
import wherefrom.parts.Place;
import wherefrom.rules.Verdict;

/** What a scan, a tap or a card did while putting together. */
public sealed interface FitOutcome {

  /** What the function for its kind makes of it. */
  default <R> R match(
      Function<Judged, R> judged,
      Function<WaitingForSpot, R> waitingForSpot,
      Function<WaitingForPart, R> waitingForPart,
      Function<Shown, R> shown,
      Function<Next, R> next,
      Function<FittedOnPurpose, R> fittedOnPurpose,
      Function<TookBack, R> tookBack,
      Function<Said, R> said) {
    if (this instanceof Judged one) {
      return judged.apply(one);
    }
    if (this instanceof WaitingForSpot one) {
      return waitingForSpot.apply(one);
    }
    if (this instanceof WaitingForPart one) {
      return waitingForPart.apply(one);
    }
    if (this instanceof Shown one) {
      return shown.apply(one);
    }
    if (this instanceof Next one) {
      return next.apply(one);
    }
    if (this instanceof FittedOnPurpose one) {
      return fittedOnPurpose.apply(one);
    }
    if (this instanceof TookBack one) {
      return tookBack.apply(one);
    }
    return said.apply((Said) this);
  }

  /** A part was judged; where the verdict is right, the fit is logged. */
  record Judged(Verdict verdict) implements FitOutcome {}

  /**
   * A part was scanned; its place is still to come.
   *
   * @param replaced whether it took the place of another part that was waiting
   */
  record WaitingForSpot(PartRecord part, boolean replaced) implements FitOutcome {}

  /** A place was scanned or tapped; its part is still to come. */
  record WaitingForPart(Spot spot, boolean replaced) implements FitOutcome {}

  /** Where a part goes; nothing was logged. */
  record Shown(PartRecord part, String sentence) implements FitOutcome {}

  /** The list goes on at this place. */
  record Next(Place place) implements FitOutcome {}

  /** A part was fitted on purpose into a place; the sentence says what that leaves open. */
  record FittedOnPurpose(Place place, String sentence) implements FitOutcome {}

  /**
   * A step was taken back.
   *
   * @param step as it stood in the logbook; empty of a half that was dropped
   * @param words what it was, which begins small, without a full stop
   * @param now how its place stands now, in a sentence; may be empty
   */
  record TookBack(Optional<LoggedEntry> step, String words, String now) implements FitOutcome {
    /** Whether a part was fitted by it. */
    boolean isFit() {
      return step.stream()
          .flatMap(LoggedEntry::each)
          .anyMatch(it -> it.entry() instanceof PartFitted);
    }

    /** Both, for where there is room. */
    public String sentence() {
      return (words + ". " + now).strip();
    }
  }

  /** Something to tell, and nothing else. */
  record Said(String sentence) implements FitOutcome {}
}
