package wherefrom.inspection.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;
import wherefrom.workings.maths.Parabola;

/** The least of readings that were taken at several crank angles. */
final class DegreeResults {
  private static final String LEAST = "least";

  private DegreeResults() {}

  /** The smallest reading; and what a parabola through all says, where it has its least inside. */
  static List<ResultValue> of(List<Sample> samples, Tool tool) {
    Unit unit = samples.get(0).unit();
    Sample low =
        samples.stream().min(Comparator.comparingDouble(one -> in(one, unit))).orElseThrow();
    double u = tool.uncertainty(in(low, unit), unit, low.readings().size(), low.scatter());
    List<ResultValue> values = new ArrayList<>();
    values.add(new ResultValue("smallest", "smallest reading", unit, in(low, unit), u, List.of()));
    fitted(samples, unit)
        .ifPresent(
            least -> {
              values.add(value(least, unit, tool));
              values.add(angle(least, unit, tool));
            });
    return values;
  }

  /**
   * What is said of a limit on the least where the curve has none inside: the smallest reading is
   * the most that it can be. Empty where the least was found.
   */
  static Optional<Judgement> judgeUnfound(List<ResultValue> values, Limit limit) {
    boolean asked =
        limit.result().equals(LEAST) && values.stream().noneMatch(DegreeResults::isLeast);
    return values.stream()
        .filter(value -> asked && value.key().equals("smallest"))
        .findFirst()
        .map(
            low ->
                limit.judgeAtMost(
                    new ResultValue(
                        LEAST,
                        "least not between the readings, so at most",
                        low.unit(),
                        low.value(),
                        low.standardUncertainty(),
                        List.of())));
  }

  private static boolean isLeast(ResultValue value) {
    return value.key().equals(LEAST);
  }

  private static double in(Sample sample, Unit unit) {
    return Amount.of(sample.mean(), sample.unit()).in(unit);
  }

  private static Optional<Parabola.Lowest> fitted(List<Sample> samples, Unit unit) {
    if (samples.size() < Parabola.FEWEST) {
      return Optional.empty();
    }
    double[] degrees = samples.stream().mapToDouble(one -> degrees(one.station())).toArray();
    double[] sizes = samples.stream().mapToDouble(one -> in(one, unit)).toArray();
    return new Parabola(degrees, sizes).findLowest();
  }

  /** {@code before-10} is 10 degrees before top dead center, so -10. */
  private static double degrees(Station station) {
    String key = station.key();
    double size = Double.parseDouble(key.substring(key.indexOf('-') + 1));
    return key.startsWith("before") ? -size : size;
  }

  /**
   * What each reading brings of its own averages out; what the tool is off, does not. How far the
   * readings lie off the curve counts with them, as a lift curve is no parabola.
   */
  private static ResultValue value(Parabola.Lowest least, Unit unit, Tool tool) {
    double own = own(least, unit, tool) * least.share();
    double all = tool.budget(least.y(), unit).without(Set.of("repeat", "resolution")).combined();
    return new ResultValue(
        LEAST, "least, by the curve", unit, least.y(), Math.hypot(own, all), List.of());
  }

  private static ResultValue angle(Parabola.Lowest least, Unit unit, Tool tool) {
    return new ResultValue(
        "least-at",
        "least at, after top dead center",
        Unit.DEGREE,
        least.x(),
        own(least, unit, tool) * least.shift(),
        List.of());
  }

  private static double own(Parabola.Lowest least, Unit unit, Tool tool) {
    double read = tool.budget(least.y(), unit).without(Set.of("tool", "temperature")).combined();
    return Math.hypot(read, least.scatter());
  }
}
