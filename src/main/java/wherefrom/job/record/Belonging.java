package wherefrom.job.record;

import java.util.Optional;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.engine.ValveSpot;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.parts.Place;

/** To which cylinder things belong, as the record is laid out; 0 is none. */
final class Belonging {
  private Belonging() {}

  static int cylinder(Spot spot) {
    if (spot instanceof ValveSpot valve) {
      return valve.cylinder();
    }
    if (spot instanceof RodSpot rod) {
      return rod.cylinder();
    }
    return spot instanceof BoreSpot bore ? bore.cylinder() : 0;
  }

  /** By where the part sits, else by the place that it came out of. */
  static int cylinder(EngineJob job, int item) {
    Optional<Place> place =
        job.findSeat(item).or(() -> job.findPart(item).map(record -> record.part().home()));
    return place.map(at -> cylinder(at.spot())).orElse(0);
  }

  static int cylinder(EngineJob job, Subject subject) {
    if (subject instanceof Subject.APart part) {
      return cylinder(job, part.item());
    }
    Subject.AFeature at = (Subject.AFeature) subject;
    Feature.Reach reach = at.feature().reach();
    return reach == Feature.Reach.VALVE || reach == Feature.Reach.CYLINDER
        ? Spots.find(at.where()).map(Belonging::cylinder).orElse(0)
        : 0;
  }
}
