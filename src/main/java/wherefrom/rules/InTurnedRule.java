package wherefrom.rules;

import java.util.List;
import java.util.Optional;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.parts.Places;

/** A part that was fitted turned, and nobody has said since that it may stay so. */
final class InTurnedRule implements ObjectionRule {
  @Override
  public List<Objection> find(JobFacts bench, Part part, Place place) {
    long since = bench.turnedAt(part.item());
    if (since == 0 || !bench.findFittedAt(part.item()).equals(Optional.of(place))) {
      return List.of();
    }
    Misplaced.WrongEnd turned =
        new Misplaced.WrongEnd(part, place, Places.orientation(bench.layout(), part.kind()));
    return List.of(new Objection(turned, since));
  }
}
