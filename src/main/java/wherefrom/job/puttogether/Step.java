package wherefrom.job.puttogether;

import wherefrom.engine.Spot;
import wherefrom.job.PartRecord;
import wherefrom.parts.Place;
import wherefrom.rules.Verdict;

/** What a scan, a tap or a card did while putting together. */
public sealed interface Step {

  /** A part was judged; where the verdict is right, the fit is logged. */
  record Judged(Verdict verdict) implements Step {}

  /**
   * A part was scanned; its place is still to come.
   *
   * @param replaced whether it took the place of another part that was waiting
   */
  record WaitingForSpot(PartRecord part, boolean replaced) implements Step {}

  /** A place was scanned or tapped; its part is still to come. */
  record WaitingForPart(Spot spot, boolean replaced) implements Step {}

  /** Where a part goes; nothing was logged. */
  record Shown(PartRecord part, String sentence) implements Step {}

  /** The list goes on at this place. */
  record Next(Place place) implements Step {}

  /** A part was fitted on purpose into a place; the sentence says what that leaves open. */
  record FittedOnPurpose(Place place, String sentence) implements Step {}

  /** A step was taken back; the sentence, which begins small, says which. */
  record TookBack(String sentence) implements Step {}

  /** Something to tell, and nothing else. */
  record Said(String sentence) implements Step {}
}
