package wherefrom.rules;

import java.util.Optional;
import wherefrom.parts.Place;

/** A part that came out of another place. */
final class OtherPlaceRule implements VerdictRule {
  @Override
  public Optional<Verdict> judge(Bench bench, Attempt attempt) {
    Place place = new Place(attempt.part().kind(), attempt.spot());
    return attempt.part().home().equals(place)
        ? Optional.empty()
        : Optional.of(new Verdict.OtherPlace(attempt.part(), place, bench.findOwner(place)));
  }
}
