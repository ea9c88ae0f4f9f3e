package wherefrom.rules;

import java.util.List;
import java.util.Optional;
import wherefrom.parts.Orientation;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Places;

/**
 * Judges a part at a spot. The rules are asked in order and the first that applies gives the
 * verdict; only when none does is it the right place, so a rule that is forgotten by the caller
 * cannot turn a wrong place into a right one: the last rule compares the places.
 */
public final class VerdictRules {
  private static final List<VerdictRule> RULES =
      List.of(
          new RetiredPartRule(),
          new WrongKindRule(),
          new AlreadyFittedRule(),
          new MustBeNewRule(),
          new NotClearedRule(),
          new PlaceTakenRule(),
          new OtherPlaceRule(),
          new WrongEndRule());

  private VerdictRules() {}

  public static Verdict judge(Bench bench, Attempt attempt) {
    return RULES.stream()
        .map(rule -> rule.judge(bench, attempt))
        .flatMap(Optional::stream)
        .findFirst()
        .orElseGet(() -> right(bench, attempt));
  }

  private static Verdict right(Bench bench, Attempt attempt) {
    Part part = attempt.part();
    return new Verdict.RightPlace(part, new Place(part.kind(), attempt.spot()), hint(bench, part));
  }

  /** What to watch while the part goes in. */
  private static String hint(Bench bench, Part part) {
    String pieces = part.pieces() > 1 ? "All " + part.pieces() + " pieces of the set. " : "";
    Orientation orientation = Places.orientation(bench.layout(), part.kind());
    String way =
        switch (orientation) {
          case NONE -> "";
          case TOP_END -> "The tagged end goes up.";
          case HALF -> "Tang into its notch, oil hole over its hole.";
          case FACING -> "The same way round as it came out.";
        };
    return (pieces + way).strip();
  }
}
