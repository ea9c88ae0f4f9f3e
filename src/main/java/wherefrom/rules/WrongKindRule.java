package wherefrom.rules;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.parts.Orientation;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/** A rod shell at a main, a pushrod at a big end; and an upper shell at a lower place. */
final class WrongKindRule implements VerdictRule {
  @Override
  public Optional<Verdict> judge(JobFacts bench, Attempt attempt) {
    Part part = attempt.part();
    Spot spot = attempt.spot();
    if (!Place.canLive(part.kind(), spot)) {
      return Optional.of(verdict(bench, attempt));
    }
    Place place = new Place(part.kind(), spot);
    if (part.kind().orientation() == Orientation.HALF
        && !spot.findHalf().equals(part.home().spot().findHalf())) {
      return Optional.of(new Misplaced.WrongHalf(part, place, bench.findRightful(place)));
    }
    return Optional.empty();
  }

  static Verdict verdict(JobFacts bench, Attempt attempt) {
    return new Misplaced.WrongKind(
        attempt.part(), attempt.spot(), attempt.wanted(), right(bench, attempt));
  }

  /** The part that the list wants. */
  private static Optional<Part> right(JobFacts bench, Attempt attempt) {
    return attempt
        .wanted()
        .map(kind -> new Place(kind, attempt.spot()))
        .flatMap(bench::findRightful);
  }
}
