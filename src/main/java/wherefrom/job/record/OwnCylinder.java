package wherefrom.job.record;

import java.util.Optional;
import wherefrom.engine.Spot;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.parts.Place;

/** To which cylinder things belong, as the record is laid out; 0 is none. */
final class OwnCylinder {
  private OwnCylinder() {}

  static int cylinder(Spot spot) {
    return spot.findCylinder().orElse(0);
  }

  /** By where the part sits, else by the place that it came out of. */
  static int cylinder(EngineJob job, int item) {
    Optional<Place> place =
        job.findSeat(item).or(() -> job.findPart(item).map(record -> record.part().home()));
    return place.map(at -> cylinder(at.spot())).orElse(0);
  }

  static int cylinder(EngineJob job, Subject subject) {
    return subject.match(part -> cylinder(job, part.item()), OwnCylinder::cylinder, beside -> 0);
  }

  private static int cylinder(Subject.AFeature at) {
    return switch (at.feature().reach()) {
      case VALVE, CYLINDER -> at.site().findCylinder().orElse(0);
      default -> 0;
    };
  }
}
