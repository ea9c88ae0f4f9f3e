package wherefrom.rules;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import wherefrom.parts.Over;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;

/**
 * A shell lies in its cap, the upper one of a big end in its rod: while that is away, as at the
 * machine shop, the shell cannot be in its place. Where caps are not tracked nothing is said.
 */
public final class HolderRule implements VerdictRule {
  private static final Set<Whereabouts> AWAY =
      EnumSet.of(Whereabouts.WASHING, Whereabouts.AT_SHOP, Whereabouts.LOST);

  @Override
  public Optional<Verdict> judge(JobFacts bench, Attempt attempt) {
    Part part = attempt.part();
    return find(bench, part, new Place(part.kind(), attempt.spot()));
  }

  /** What is said of a shell that is to go into a place; empty where what holds it is at hand. */
  public static Optional<Verdict> find(JobFacts bench, Part part, Place place) {
    return findAway(bench, place)
        .map(holder -> new Verdict.NotCleared(part, place, hold(holder), why(bench, holder), ""));
  }

  /** The part that a place's part lies in, where that is away; empty where it is at hand. */
  public static Optional<Part> findAway(JobFacts bench, Place place) {
    return Over.findHolder(place)
        .flatMap(bench::findRightful)
        .filter(holder -> AWAY.contains(bench.whereabouts(holder.item())));
  }

  private static Hold hold(Part holder) {
    return holder.kind() == PartKind.ROD ? Hold.ROD_AWAY : Hold.CAP_AWAY;
  }

  private static String why(JobFacts bench, Part holder) {
    String what = holder.kind() == PartKind.ROD ? "its rod is " : "its cap is ";
    String where = bench.whereabouts(holder.item()).words();
    return what + where + bench.findAwayTo(holder.item()).map(", "::concat).orElse("");
  }
}
