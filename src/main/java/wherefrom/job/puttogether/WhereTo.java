package wherefrom.job.puttogether;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.engine.Spot;
import wherefrom.job.EngineJob;
import wherefrom.job.PartRecord;
import wherefrom.job.Untagged;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Belonging;
import wherefrom.rules.PartNames;
import wherefrom.text.Words;

/** Where a part goes and what belongs at a spot, in words. */
public final class WhereTo {
  private WhereTo() {}

  /** {@code Cylinder 3, exhaust, pushrod. It is out, on the bench.} */
  public static String words(EngineJob job, Part part) {
    return belongs(job, part, Belonging.of(job.bench(), part)) + " " + now(job, part);
  }

  /** Where it is, and what stands against it there. */
  public static String now(EngineJob job, Part part) {
    PartRecord record = job.getPart(part.item());
    Belonging belongs = Belonging.of(job.bench(), part);
    String where =
        job.findFittedAt(part.item())
            .map(
                place ->
                    place.equals(belongs.place())
                        ? "It is fitted."
                        : "It is fitted elsewhere: " + place.words() + ".")
            .orElseGet(
                () ->
                    "It is "
                        + record.where().words()
                        + record.awayTo().map(to -> " (" + to + ")").orElse("")
                        + ".");
    String proof = Untagged.is(job, part.item()) ? " " + Untagged.SENTENCE : "";
    return where + proof + against(job, part);
  }

  private static String belongs(EngineJob job, Part part, Belonging belongs) {
    if (job.bench().isUnrun(part.item())) {
      return "It is new, for " + part.home().words() + " or another place that waits for one.";
    }
    return "It belongs at "
        + belongs.place().words()
        + belongs.with().map(with -> ", with " + PartNames.NUMBERS.named(with.home())).orElse("")
        + ".";
  }

  /** What stands against it where it sits. */
  private static String against(EngineJob job, Part part) {
    return job.findSeat(part.item())
        .flatMap(seat -> job.listAgainst(seat).stream().findFirst())
        .map(objection -> " But: " + objection.verdict().sentence())
        .orElse("");
  }

  /** Every part that belongs at a spot, and where it is. */
  public static String words(EngineJob job, Spot spot) {
    List<Place> places = job.places().stream().filter(place -> place.spot().equals(spot)).toList();
    if (places.isEmpty()) {
      return "Nothing is tracked at " + spot.words() + ".";
    }
    return places.stream()
        .map(place -> place.words() + ": " + owner(job, place))
        .collect(Collectors.joining("; ", "", "."));
  }

  private static String owner(EngineJob job, Place place) {
    Optional<Part> owner = job.bench().findRightful(place);
    return owner.map(part -> "number " + Words.number(part.item()) + ", ").orElse("")
        + job.state(place).words();
  }
}
