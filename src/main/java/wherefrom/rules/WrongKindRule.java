package wherefrom.rules;

import java.util.Optional;
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
      return Optional.of(new Verdict.WrongKind(part, spot));
    }
    if (part.kind().orientation() == Orientation.HALF
        && !spot.findHalf().equals(part.home().spot().findHalf())) {
      return Optional.of(new Verdict.WrongHalf(part, new Place(part.kind(), spot)));
    }
    return Optional.empty();
  }
}
