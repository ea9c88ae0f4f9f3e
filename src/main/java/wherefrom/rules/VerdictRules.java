package wherefrom.rules;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.ShellHalf;
import wherefrom.parts.Orientation;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.parts.Whereabouts;

/**
 * Judges a part at a spot. The rules are asked in order and the first that applies gives the
 * verdict; then all that stands against the part in that place ({@link Objections}), identity
 * before clearance; only where nothing does is it the right place.
 */
public final class VerdictRules {
  private static final List<VerdictRule> BEFORE =
      List.of(
          new RetiredPartRule(),
          new WrongKindRule(),
          new AlreadyFittedRule(),
          new PlaceTakenRule());
  private static final VerdictRule WRONG_END = new WrongEndRule();
  private static final List<VerdictRule> AFTER =
      List.of(new CapInRule(), new CarrierRule(), new HolderRule(), WRONG_END);

  /** What is said of a place that a part of another kind than the wanted one is not for. */
  private static final Set<VerdictName> OF_PLACES =
      EnumSet.of(
          VerdictName.WRONG_PLACE,
          VerdictName.WRONG_HALF,
          VerdictName.WRONG_MATE,
          VerdictName.PLACE_TAKEN);

  private VerdictRules() {}

  /** Judges; where the list wants a part of another kind, that is said and not the place. */
  public static Verdict judge(JobFacts bench, Attempt attempt) {
    Verdict found = find(bench, attempt);
    boolean other =
        attempt.isPointedElsewhere()
            ? found.name() != VerdictName.RETIRED
            : attempt.isOfOtherKind() && OF_PLACES.contains(found.name());
    return other ? WrongKindRule.verdict(bench, attempt) : found;
  }

  /**
   * Whether a part may go in against its stop, for a reason. What must be new or is retired never
   * may, whatever is said of it first; nor may a part of another kind.
   */
  public static boolean canBeOverruled(JobFacts bench, Attempt attempt) {
    Part part = attempt.part();
    Verdict against = judge(bench, attempt);
    return against.stops()
        && against.name() != VerdictName.WRONG_KIND
        && Place.canLive(part.kind(), attempt.spot())
        && bench.whereabouts(part.item()) != Whereabouts.RETIRED
        && Objections.of(bench, part, new Place(part.kind(), attempt.spot())).stream()
            .allMatch(Objection::canBeSettled);
  }

  /** Whether a part would be in the wrong way round, whatever else is said of it first. */
  public static boolean isTurned(JobFacts bench, Attempt attempt) {
    return WRONG_END.judge(bench, attempt).isPresent();
  }

  private static Verdict find(JobFacts bench, Attempt attempt) {
    return findFirst(BEFORE, bench, attempt)
        .or(() -> objection(bench, attempt))
        .or(() -> findFirst(AFTER, bench, attempt))
        .orElseGet(() -> right(bench, attempt));
  }

  private static Optional<Verdict> findFirst(
      List<VerdictRule> rules, JobFacts bench, Attempt attempt) {
    return rules.stream().flatMap(rule -> rule.judge(bench, attempt).stream()).findFirst();
  }

  private static Optional<Verdict> objection(JobFacts bench, Attempt attempt) {
    Place place = new Place(attempt.part().kind(), attempt.spot());
    return Objections.findFirst(bench, attempt.part(), place).map(Objection::verdict);
  }

  private static Verdict right(JobFacts bench, Attempt attempt) {
    Part part = attempt.part();
    Place place = new Place(part.kind(), attempt.spot());
    return new Verdict.RightPlace(
        part, place, (hint(bench, place, part.pieces()) + retag(part, place)).strip());
  }

  /** A new part from the box may go to another place than its tag was printed for. */
  private static String retag(Part part, Place place) {
    return part.fresh() && !part.home().equals(place)
        ? " Its tag names " + part.home().figures() + ": print it again."
        : "";
  }

  /** What to watch while the part goes in. */
  private static String hint(JobFacts bench, Place place, int count) {
    String pieces = count > 1 ? "All " + count + " pieces of the set. " : "";
    Orientation orientation = Places.orientation(bench.layout(), place.kind());
    String way =
        switch (orientation) {
          case NONE -> "";
          case TOP_END -> "The tagged end goes up.";
          case HALF -> half(place);
          case FACING -> "The same way round as it came out.";
        };
    return (pieces + way).strip();
  }

  /**
   * The upper main shell lets the oil in through its hole, many an upper rod shell has one, a lower
   * one usually none. Common practice, no source.
   */
  private static String half(Place place) {
    boolean upper = place.spot().findHalf().filter(ShellHalf.UPPER::equals).isPresent();
    if (!upper) {
      return "Tang into its notch.";
    }
    return place.kind() == PartKind.MAIN_SHELL
        ? "Tang into its notch, oil hole over its hole."
        : "Tang into its notch. An oil hole: over its hole.";
  }
}
