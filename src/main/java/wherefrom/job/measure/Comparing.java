package wherefrom.job.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.Bank;
import wherefrom.engine.Spot;
import wherefrom.engine.ValveSpot;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.inspection.compare.OddOneOut;
import wherefrom.inspection.compare.StraightLine;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.MeasuredResult;
import wherefrom.job.OpenJob;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;

/** Sets held against each other, as data for a plot. */
public final class Comparing {
  private static final String STUDS = "stud-height";

  private final OpenJob job;

  public Comparing(OpenJob job) {
    this.job = job;
  }

  /**
   * The unit in which what a plan measured is shown: the job's, but a pressure or a share as it was
   * worked out, since no gauge reads a pressure in the unit of a modulus.
   */
  public Unit unit(String plan) {
    return sized(plan).stream()
        .flatMap(result -> result.findSize().stream())
        .map(ResultValue::unit)
        .findFirst()
        .map(unit -> isAsRead(unit) ? unit : job.state().units().unit(unit.dimension()))
        .orElseGet(
            () ->
                job.state()
                    .units()
                    .unit(ReadingPlans.find(plan).orElseThrow().stations().get(0).dimension()));
  }

  private static boolean isAsRead(Unit unit) {
    return unit.dimension() == Dimension.STRESS || unit.dimension() == Dimension.NUMBER;
  }

  private List<MeasuredResult> sized(String plan) {
    return job.state().measures().listResults(plan).stream()
        .filter(result -> result.findSize().isPresent())
        .toList();
  }

  /**
   * The odd one out of everything measured by a plan, in {@link #unit}; empty where nothing was
   * measured.
   */
  public Optional<OddOneOut> compare(String plan) {
    List<MeasuredResult> results = sized(plan);
    if (results.isEmpty()) {
      return Optional.empty();
    }
    Unit unit = unit(plan);
    double[] values = new double[results.size()];
    double u = 0;
    for (int at = 0; at < values.length; at++) {
      ResultValue size = results.get(at).findSize().orElseThrow();
      values[at] = size.amount().in(unit);
      u = Math.max(u, Amount.of(size.standardUncertainty(), size.unit()).in(unit));
    }
    List<String> names = results.stream().map(result -> name(result.subject())).toList();
    List<String> sides = results.stream().map(result -> side(result.subject())).toList();
    return Optional.of(OddOneOut.of(names, sides, values, u));
  }

  /**
   * A straightedge over the stud tops of a bank, in mm; empty while fewer than four are measured.
   *
   * @param pitch the distance from each valve's stud to the next, front to rear, in mm; empty takes
   *     them as evenly spaced
   */
  public Optional<StraightLine> studs(Bank bank, List<Double> pitch) {
    List<String> names = new ArrayList<>();
    List<Double> positions = new ArrayList<>();
    List<Double> heights = new ArrayList<>();
    double u = 0;
    double position = 0;
    List<ValveSpot> order = job.state().layout().valvesInOrder(bank);
    for (int at = 0; at < order.size(); at++) {
      Subject stud = new Subject.AFeature(Feature.STUD, order.get(at).key());
      Optional<ResultValue> size =
          job.state().measures().findResult(stud, STUDS).flatMap(MeasuredResult::findSize);
      if (size.isPresent()) {
        names.add(order.get(at).figures());
        positions.add(position);
        heights.add(size.get().amount().in(Unit.MILLIMETRE));
        u = Math.max(u, millimetres(size.get()));
      }
      position += at < pitch.size() ? pitch.get(at) : 1;
    }
    return names.size() < StraightLine.FEWEST
        ? Optional.empty()
        : Optional.of(StraightLine.of(names, array(positions), array(heights), u));
  }

  private static double millimetres(ResultValue size) {
    return Amount.of(size.standardUncertainty(), size.unit()).in(Unit.MILLIMETRE);
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Intake and exhaust differ by design; what belongs to no valve has no side. */
  private String side(Subject subject) {
    Optional<Spot> spot =
        subject.match(
            part -> Optional.of(job.state().getPart(part.item()).part().home().spot()),
            feature -> feature.site().findSpot(),
            beside -> Optional.empty());
    return spot.map(
            at ->
                at.match(
                    valve -> valve.side().word(), bore -> "", rod -> "", main -> "", cam -> ""))
        .orElse("");
  }

  private String name(Subject subject) {
    return subject.match(
        tagged -> job.state().getPart(tagged.item()).part().home().figures(),
        Subject.AFeature::where,
        Subject.Beside::words);
  }
}
