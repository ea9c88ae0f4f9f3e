package wherefrom.inspection.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Measured;
import wherefrom.quantity.Unit;
import wherefrom.workings.Inputs;
import wherefrom.workings.Result;
import wherefrom.workings.ResultValue;
import wherefrom.workings.Working;
import wherefrom.workings.catalogue.compression.LeakDown;
import wherefrom.workings.catalogue.size.BoreShape;
import wherefrom.workings.catalogue.size.JournalShape;

/** What follows from a plan's readings. */
public final class Results {
  private static final Set<String> NEED_STANDARD =
      Set.of("wear", "undersize", "oversize", "clean-up");

  private Results() {}

  /** The same for a surface that was never cut. */
  public static List<ResultValue> of(
      ReadingPlan plan, List<Sample> samples, Tool tool, Optional<Amount> standard) {
    return of(plan, samples, tool, standard, Optional.empty());
  }

  /**
   * Works a plan's results out; empty where the working refuses the figures, as when a station was
   * left out.
   *
   * @param standard the size when new, for journals and bores; without it wear and the next size
   *     are left out
   * @param asCut the diameter that a journal or a bore was cut to last; empty where it never was
   */
  public static List<ResultValue> of(
      ReadingPlan plan,
      List<Sample> samples,
      Tool tool,
      Optional<Amount> standard,
      Optional<Amount> asCut) {
    if (samples.isEmpty()) {
      return List.of();
    }
    return switch (plan.shape()) {
      case VALUE -> List.of(value("value", plan.title(), samples.get(0).measured(tool), 1));
      case DEGREES -> DegreeResults.of(samples, tool);
      case AT -> at(plan, samples, tool);
      case LEAK -> leak(samples, tool);
      case HALF -> List.of(value("value", plan.title(), samples.get(0).measured(tool), 0.5));
      case LARGEST -> List.of(value("largest", "largest reading", largest(samples, tool), 1));
      case SPREAD -> spread(samples, tool);
      case EACH -> each(samples, tool);
      case SHIM -> shim(plan, samples.get(0).measured(tool), standard);
      case PRESS -> press(samples, tool);
      case LIFT -> lift(samples, tool);
      case JOURNAL -> shape(new JournalShape(), "standard", samples, tool, standard, asCut, false);
      case BORE -> shape(new BoreShape(), "nominal", samples, tool, standard, asCut, true);
    };
  }

  /**
   * What a limit says of a result that these values lack though every station was read; empty where
   * they have it, or nothing can be said.
   */
  public static Optional<Judgement> judgeLacking(
      ReadingPlan plan, List<ResultValue> values, Limit limit) {
    return plan.shape() == Derivation.DEGREES
        ? DegreeResults.judgeUnfound(values, limit)
        : Optional.empty();
  }

  private static ResultValue value(String key, String words, Measured measured, double factor) {
    Unit unit = measured.value().unit();
    double u = measured.standardUncertainty().map(amount -> amount.in(unit)).orElse(0.0);
    return new ResultValue(
        key, words, unit, factor * measured.value().in(unit), factor * u, List.of());
  }

  /** What it was read at is no reading of the tool. */
  private static List<ResultValue> at(ReadingPlan plan, List<Sample> samples, Tool tool) {
    return find(samples, plan.stations().get(0).key())
        .map(one -> List.of(value("value", plan.title(), one.measured(tool), 1)))
        .orElse(List.of());
  }

  private static List<ResultValue> leak(List<Sample> samples, Tool tool) {
    Inputs inputs = Inputs.empty();
    for (Sample sample : samples) {
      inputs = inputs.with(sample.station().key(), sample.measured(tool));
    }
    return new LeakDown().compute(inputs) instanceof Result result ? result.values() : List.of();
  }

  private static Measured largest(List<Sample> samples, Tool tool) {
    return sorted(samples).get(samples.size() - 1).measured(tool);
  }

  private static List<Sample> sorted(List<Sample> samples) {
    Unit unit = samples.get(0).unit();
    return samples.stream()
        .sorted(Comparator.comparingDouble(s -> Amount.of(s.mean(), s.unit()).in(unit)))
        .toList();
  }

  private static List<ResultValue> spread(List<Sample> samples, Tool tool) {
    List<Sample> sorted = sorted(samples);
    Unit unit = samples.get(0).unit();
    ResultValue least = value("smallest", "smallest reading", sorted.get(0).measured(tool), 1);
    ResultValue most = value("largest", "largest reading", largest(samples, tool), 1);
    double low = least.amount().in(unit);
    double high = most.amount().in(unit);
    double mean =
        samples.stream()
            .mapToDouble(s -> Amount.of(s.mean(), s.unit()).in(unit))
            .average()
            .orElseThrow();
    // The readings of one tool are off together, so the mean is no better than one of them.
    double u = most.standardUncertainty();
    return List.of(
        least,
        most,
        new ResultValue("mean", "mean", unit, mean, u, List.of()),
        new ResultValue("spread", "spread", unit, high - low, difference(sorted, tool), List.of()));
  }

  /** The wanted height is what the manual prints: without uncertainty. */
  private static List<ResultValue> shim(
      ReadingPlan plan, Measured measured, Optional<Amount> wanted) {
    ResultValue height = value("value", plan.title(), measured, 1);
    return wanted
        .map(
            size ->
                List.of(
                    height,
                    new ResultValue(
                        "shim",
                        "shim that makes it",
                        height.unit(),
                        height.value() - size.in(height.unit()),
                        height.standardUncertainty(),
                        List.of())))
        .orElse(List.of(height));
  }

  /** Independent readings of plug and hole add in quadrature (JCGM 100:2008, 5.1.2). */
  private static List<ResultValue> press(List<Sample> samples, Tool tool) {
    Optional<ResultValue> around = find(samples, "around").map(one -> sized(one, tool));
    Optional<ResultValue> inside = find(samples, "inside").map(one -> sized(one, tool));
    if (around.isEmpty() || inside.isEmpty()) {
      return List.of();
    }
    Unit unit = around.get().unit();
    double u = Amount.of(inside.get().standardUncertainty(), inside.get().unit()).in(unit);
    return List.of(
        new ResultValue(
            "press",
            "press",
            unit,
            inside.get().amount().in(unit) - around.get().value(),
            Math.hypot(u, around.get().standardUncertainty()),
            List.of()));
  }

  private static ResultValue sized(Sample sample, Tool tool) {
    return value(sample.station().key(), "", sample.measured(tool), 1);
  }

  private static List<ResultValue> each(List<Sample> samples, Tool tool) {
    List<ResultValue> values = new ArrayList<>();
    for (Sample sample : samples) {
      values.add(
          value(
              sample.station().key(),
              ResultKeys.words(sample.station()),
              sample.measured(tool),
              1));
    }
    values.addAll(spread(samples, tool));
    return values;
  }

  /** What one tool brings equally into both readings cancels in their difference. */
  private static double difference(List<Sample> sorted, Tool tool) {
    Sample low = sorted.get(0);
    Sample high = sorted.get(sorted.size() - 1);
    Set<String> shared = Set.of("tool", "temperature");
    return tool.budget(high.mean(), high.unit())
        .minus(tool.budget(low.mean(), low.unit()), shared)
        .combined();
  }

  private static List<ResultValue> lift(List<Sample> samples, Tool tool) {
    Optional<Sample> toe = find(samples, "heel-toe");
    Optional<Sample> across = find(samples, "across");
    if (toe.isEmpty() || across.isEmpty()) {
      return List.of();
    }
    Unit unit = toe.get().unit();
    double lift = toe.get().mean() - Amount.of(across.get().mean(), across.get().unit()).in(unit);
    double u = difference(List.of(across.get(), toe.get()), tool);
    return List.of(new ResultValue("lift", "lobe lift", unit, lift, u, List.of()));
  }

  private static Optional<Sample> find(List<Sample> samples, String station) {
    return samples.stream().filter(s -> s.station().key().equals(station)).findFirst();
  }

  /**
   * Without a standard size one of the readings stands in for it, and what needs it is left out.
   */
  private static List<ResultValue> shape(
      Working working,
      String standardKey,
      List<Sample> samples,
      Tool tool,
      Optional<Amount> standard,
      Optional<Amount> asCut,
      boolean bore) {
    Inputs inputs = Inputs.empty();
    if (standard.isPresent() && asCut.isPresent()) {
      inputs = inputs.with("as-cut", asCut.get());
    }
    for (Sample sample : samples) {
      inputs = inputs.with(sample.station().key(), sample.measured(tool));
    }
    List<Sample> sorted = sorted(samples);
    Sample standIn = bore ? sorted.get(0) : sorted.get(sorted.size() - 1);
    Amount size = standard.orElse(Amount.of(standIn.mean(), standIn.unit()));
    if (!(working.compute(inputs.with(standardKey, size)) instanceof Result result)) {
      return List.of();
    }
    return result.values().stream()
        .filter(value -> standard.isPresent() || !NEED_STANDARD.contains(value.key()))
        .toList();
  }
}
