package wherefrom.job.shop;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.inspection.match.Fingerprint;
import wherefrom.inspection.measure.Derivation;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.Tool;
import wherefrom.job.EngineJob;
import wherefrom.job.FigureParser;
import wherefrom.job.MeasuredResult;
import wherefrom.parts.Part;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;

/** What was measured on parts, as what they are told apart by. */
final class Fingerprints {
  /** Keeps the mathematics sound where a tool's card says that it is never off. */
  private static final double LEAST_U = 1e-5;

  private final EngineJob job;

  Fingerprints(EngineJob job) {
    this.job = job;
  }

  String toolOf(int item, ReadingPlan plan) {
    return result(item, plan).map(result -> result.tool().name()).orElse("");
  }

  private Optional<MeasuredResult> result(int item, ReadingPlan plan) {
    return job.findPart(item).flatMap(part -> record(part.part(), plan.key()));
  }

  /** What was recorded of a part; empty where a plan was never used on it. */
  Optional<Fingerprint> recorded(int item, List<ReadingPlan> plans) {
    List<Double> values = new ArrayList<>();
    List<Double> us = new ArrayList<>();
    for (ReadingPlan plan : plans) {
      Optional<MeasuredResult> before = result(item, plan);
      if (before.isEmpty()) {
        return Optional.empty();
      }
      ResultValue size = before.get().findSize().orElseThrow();
      values.add(size.amount().inBase().doubleValue());
      double u = Amount.of(size.standardUncertainty(), size.unit()).inBase().doubleValue();
      us.add(Math.max(u, LEAST_U));
    }
    return Optional.of(new Fingerprint(Integer.toString(item), values, us));
  }

  /**
   * How much it matters where on the part one reads, as a standard uncertainty: the records' widest
   * spread over their stations, any spot in it equally likely (JCGM 100:2008, 4.3.7).
   */
  double uneven(List<Integer> candidates, ReadingPlan plan) {
    double widest = 0;
    for (int item : candidates) {
      DoubleSummaryStatistics read =
          result(item, plan).stream()
              .filter(result -> plan.shape() == Derivation.SPREAD)
              .flatMap(result -> result.samples().stream())
              .mapToDouble(one -> Amount.of(one.mean(), one.unit()).inBase().doubleValue())
              .summaryStatistics();
      widest = read.getCount() == 0 ? widest : Math.max(widest, read.getMax() - read.getMin());
    }
    return widest / Math.sqrt(12);
  }

  /** What is wrong with the readings of an untagged part; they go into {@code found} if nothing. */
  Optional<String> read(
      String mark,
      Map<String, String> texts,
      List<ReadingPlan> plans,
      Map<String, String> tools,
      List<Double> uneven,
      List<Fingerprint> found) {
    List<Double> values = new ArrayList<>();
    List<Double> us = new ArrayList<>();
    for (ReadingPlan plan : plans) {
      Tool tool = job.measures().findTool(tools.getOrDefault(plan.key(), "")).orElseThrow();
      Optional<String> fault =
          FigureParser.read(
              texts.getOrDefault(plan.key(), ""),
              job.units(),
              plan.stations().get(0).dimension(),
              size -> {
                Unit unit = tool.resolution().unit();
                double u = tool.uncertainty(size.in(unit), unit, 1, 0);
                double base = Amount.of(u, unit).inBase().doubleValue();
                values.add(size.inBase().doubleValue());
                us.add(Math.max(Math.hypot(base, uneven.get(us.size())), LEAST_U));
                return Optional.<String>empty();
              },
              Optional::of);
      if (fault.isPresent()) {
        return Optional.of("Number " + mark + ", " + plan.title() + ": " + fault.get());
      }
    }
    found.add(new Fingerprint(mark, values, us));
    return Optional.empty();
  }

  Optional<MeasuredResult> record(Part part, String plan) {
    return job.measures()
        .findResult(Subject.ofPart(part.item()), plan)
        .filter(result -> result.findSize().isPresent());
  }
}
