package wherefrom.rules;

import java.util.List;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/** A part that belongs at another place. */
final class WrongPlaceRule implements ObjectionRule {
  @Override
  public List<Objection> find(JobFacts bench, Part part, Place place) {
    if (Belonging.isAt(bench, part, place)) {
      return List.of();
    }
    Belonging belongs = Belonging.of(bench, part);
    return List.of(
        new Objection(
            new Misplaced.WrongPlace(part, place, belongs, bench.findRightful(place)),
            belongs.since()));
  }
}
