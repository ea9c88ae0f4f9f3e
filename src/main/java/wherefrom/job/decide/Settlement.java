package wherefrom.job.decide;

import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.inspection.Check;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.EngineJob;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OilClearances;
import wherefrom.job.PairClearances;
import wherefrom.parts.Part;

/**
 * What would settle a part of which nothing can be proposed yet.
 *
 * @param way what is to be done
 * @param plan what is measured by it; empty where no single plan says it
 */
public record Settlement(Way way, Optional<ReadingPlan> plan) {

  /** What is to be done. */
  public enum Way {
    /** Nobody looked at it yet. */
    INSPECT,
    /** A test is suspect, and what was seen can be measured. */
    MEASURE,
    /** A reading is too near its limit. */
    MEASURE_BETTER,
    /** It is measured, and no limit says what the reading means. */
    TYPE_LIMIT,
    /** No reading tells: the person decides. */
    DECIDE
  }

  private static Settlement of(Way way) {
    return new Settlement(way, Optional.empty());
  }

  /** What comes first: a reading that is there already, then what was seen, then what was not. */
  static Settlement of(EngineJob job, Part part) {
    Optional<MeasuredResult> open =
        job.measures().listResults(Subject.ofPart(part.item())).stream()
            .filter(result -> result.worst() == Look.SUSPECT)
            .findFirst();
    if (open.isPresent()) {
      return new Settlement(Way.MEASURE_BETTER, Optional.of(open.get().plan()));
    }
    if (isClearanceOpen(job, part)) {
      return of(Way.MEASURE_BETTER);
    }
    return suspects(job, part)
        .map(check -> of(job, part, check))
        .min((one, other) -> one.way().compareTo(other.way()))
        .orElseGet(() -> of(Way.INSPECT));
  }

  private static boolean isClearanceOpen(EngineJob job, Part part) {
    Stream<Look> oil = new OilClearances(job).findFor(part).stream().map(found -> found.look());
    Stream<Look> pairs =
        new PairClearances(job)
            .find(Subject.ofPart(part.item())).stream().map(found -> found.look());
    return Stream.concat(oil, pairs).anyMatch(Look.SUSPECT::equals);
  }

  private static Stream<Optional<Check>> suspects(EngineJob job, Part part) {
    return job.getPart(part.item()).looks().entrySet().stream()
        .filter(look -> look.getValue() == Look.SUSPECT)
        .map(look -> Checks.find(look.getKey()));
  }

  /** What settles a test that is suspect. */
  private static Settlement of(EngineJob job, Part part, Optional<Check> check) {
    Optional<ReadingPlan> plan = check.flatMap(Check::plan).flatMap(ReadingPlans::find);
    Optional<MeasuredResult> result =
        plan.flatMap(one -> job.measures().findResult(Subject.ofPart(part.item()), one.key()));
    if (plan.isEmpty()) {
      return of(Way.DECIDE);
    }
    if (result.isEmpty() || (!result.get().isWhole() && !result.get().isEach())) {
      return new Settlement(Way.MEASURE, plan);
    }
    if (result.get().judgements().isEmpty()) {
      return new Settlement(Way.TYPE_LIMIT, plan);
    }
    return of(result.get().worst() == Look.SUSPECT ? Way.MEASURE_BETTER : Way.DECIDE);
  }

  /** What is said after the answer of a test that is suspect; empty where its reading says it. */
  static String advice(EngineJob job, Part part, String check) {
    return switch (of(job, part, Checks.find(check)).way()) {
      case MEASURE -> " Measure it.";
      case TYPE_LIMIT -> " It is measured: type its limit.";
      case MEASURE_BETTER, INSPECT -> "";
      case DECIDE -> " Ask someone who knows.";
    };
  }
}
