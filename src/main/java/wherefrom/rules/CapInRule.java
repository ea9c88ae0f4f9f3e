package wherefrom.rules;

import java.util.Optional;
import wherefrom.parts.Over;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/**
 * Nothing goes into a bearing under a cap that was fitted. Either the part is in the wrong place or
 * the cap was off and nobody said so. A cap that never came out says nothing: what lies under it
 * cannot have come out either, so that the record is short of it.
 */
public final class CapInRule implements VerdictRule {
  @Override
  public Optional<Verdict> judge(JobFacts bench, Attempt attempt) {
    Part part = attempt.part();
    return find(bench, part, new Place(part.kind(), attempt.spot()));
  }

  /** What is said of a part that is to go into a place; empty where no fitted cap closes it. */
  public static Optional<Verdict> find(JobFacts bench, Part part, Place place) {
    return Over.findCap(place)
        .flatMap(bench::findFitted)
        .map(cap -> new Verdict.NotCleared(part, place, Hold.CAP_IN, "its cap is in", ""));
  }
}
