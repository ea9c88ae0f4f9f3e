package wherefrom.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/**
 * What stands against a part in a place, at any time: before it goes in, while it sits there, and
 * in an engine that was never opened so far. Whoever wants to know whether a part is right asks
 * here. Identity comes first: whose place it is, then with whom it runs, then whether it may be
 * used.
 */
public final class Objections {
  private static final List<ObjectionRule> RULES =
      List.of(
          new WrongPlaceRule(),
          new WrongMateRule(),
          new MustBeNewRule(),
          new NotClearedRule(),
          new InTurnedRule());

  private Objections() {}

  /** Everything, the most serious first; the place must be one that the part can live at. */
  public static List<Objection> of(JobFacts bench, Part part, Place place) {
    List<Objection> all = new ArrayList<>();
    for (ObjectionRule rule : RULES) {
      all.addAll(rule.find(bench, part, place));
    }
    return all;
  }

  /** The most serious; empty where nothing stands against the part there. */
  static Optional<Objection> findFirst(JobFacts bench, Part part, Place place) {
    for (ObjectionRule rule : RULES) {
      List<Objection> found = rule.find(bench, part, place);
      if (!found.isEmpty()) {
        return Optional.of(found.get(0));
      }
    }
    return Optional.empty();
  }

  /**
   * What stands against a part that sits in a place: less what was known when somebody gave a
   * reason for it to sit there all the same. What must be new is settled by none.
   */
  public static List<Objection> ofSeated(JobFacts bench, Part part, Place place) {
    long reason = bench.reasonGiven(part.item());
    return of(bench, part, place).stream()
        .filter(objection -> !objection.isSettledBy(reason))
        .toList();
  }
}
