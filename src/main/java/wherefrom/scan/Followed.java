package wherefrom.scan;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import wherefrom.scan.find.Candidate;
import wherefrom.scan.geometry.Pose;

/** What was made of the candidates of one picture: each is followed up once. */
final class Followed {
  private final Map<Pose, Candidate> refined = new HashMap<>();
  private final Map<Pose, PoseReading> read = new HashMap<>();

  /** Where a candidate lies after the rough refinement. */
  Candidate refined(Pose candidate, Function<Pose, Candidate> refiner) {
    return refined.computeIfAbsent(candidate, refiner);
  }

  /** What a place says. */
  PoseReading read(Pose place, Function<Pose, PoseReading> reader) {
    return read.computeIfAbsent(place, reader);
  }
}
