package wherefrom.rules;

import java.util.Optional;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Spot;
import wherefrom.parts.Orientation;
import wherefrom.parts.Part;
import wherefrom.parts.Place;

/** A rod shell at a main, a pushrod at a big end; and an upper shell at a lower place. */
final class WrongKindRule implements VerdictRule {
  @Override
  public Optional<Verdict> judge(Bench bench, Attempt attempt) {
    Part part = attempt.part();
    Spot spot = attempt.spot();
    if (!Place.canLive(part.kind(), spot)) {
      return Optional.of(verdict(bench, attempt));
    }
    Place place = new Place(part.kind(), spot);
    Optional<ShellHalf> half = half(spot);
    if (part.kind().orientation() == Orientation.HALF && !half.equals(half(part.home().spot()))) {
      return Optional.of(new Verdict.WrongHalf(part, place, bench.findRightful(place)));
    }
    return Optional.empty();
  }

  static Verdict verdict(Bench bench, Attempt attempt) {
    return new Verdict.WrongKind(
        attempt.part(), attempt.spot(), attempt.wanted(), right(bench, attempt));
  }

  /** The part that the list wants. */
  private static Optional<Part> right(Bench bench, Attempt attempt) {
    return attempt
        .wanted()
        .map(kind -> new Place(kind, attempt.spot()))
        .flatMap(bench::findRightful);
  }

  private static Optional<ShellHalf> half(Spot spot) {
    if (spot instanceof RodSpot rod) {
      return Optional.of(rod.half());
    }
    return spot instanceof MainSpot main ? Optional.of(main.half()) : Optional.empty();
  }
}
