package wherefrom.job.money;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wherefrom.inspection.measure.Tool;
import wherefrom.job.EngineJob;
import wherefrom.job.FigureParser;
import wherefrom.job.entry.GoodsMeasured;
import wherefrom.job.entry.GoodsWay;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Goods;
import wherefrom.rules.size.CutSurface;
import wherefrom.workings.catalogue.size.SizeSteps;

/** Reads what a person measured on one of the things that came. */
public final class Gauging {
  private static final String TOO_COARSE = "This tool is too coarse for that. Use a micrometer.";

  /** Figures further apart are of two dimensions (common practice, no source). */
  private static final BigDecimal FAR_MM = BigDecimal.valueOf(5);

  private static final int HALVES = 2;

  /**
   * As it was typed.
   *
   * @param standard what a standard one measures there; without sizes, what it must measure
   * @param tolerance by how much it may differ; empty for the usual one of things with sizes
   * @param tool one of the job's tools; empty for the usual one, see {@link UsualTool}
   */
  public record Typed(
      GoodsWay way, String reading, String standard, String tolerance, String tool) {}

  /** What came of the reading. */
  public sealed interface Outcome {
    /** It cannot be read, and why. */
    record Refused(String sentence) implements Outcome {}

    /** It was read and judged. */
    record Judged(OneMeasured one) implements Outcome {}
  }

  private final EngineJob job;
  private final BuyLine line;
  private final Optional<CutSurface> surface;

  public Gauging(EngineJob job, BuyLine line) {
    this.job = job;
    this.line = line;
    surface = kind().flatMap(CutSurface::find);
  }

  private Optional<PartKind> kind() {
    return line.what().findGoods().flatMap(Goods::findKind);
  }

  /** In which ways its size shows. */
  public List<GoodsWay> ways() {
    return Arrays.stream(GoodsWay.values())
        .filter(
            way ->
                surface
                    .map(one -> OneMeasured.showsSteps(way, one))
                    .orElseGet(() -> way != GoodsWay.WALL))
        .toList();
  }

  /** Whether it comes in sizes, each so far from a standard one. */
  public boolean hasSteps() {
    return surface.isPresent() && line.size().isStep();
  }

  /** What was typed as standard for such a thing before. */
  public Optional<Amount> findStandard(GoodsWay way) {
    return new Buying(job)
        .measured().stream()
            .map(OneMeasured::entry)
            .filter(one -> one.what().equals(line.what()) && one.way() == way)
            .filter(one -> hasSteps() || one.size().equals(line.size()))
            .reduce((first, later) -> later)
            .map(GoodsMeasured::standard);
  }

  /** Reads and judges; nothing is kept. */
  public Outcome judge(Typed typed) {
    if (!ways().contains(typed.way())) {
      return new Outcome.Refused("Its size does not show in its " + typed.way().words() + ".");
    }
    return length(
        typed.reading(),
        reading ->
            length(
                typed.standard(),
                standard -> tolerance(typed, allowed -> judge(typed, reading, standard, allowed))));
  }

  private Outcome tolerance(Typed typed, Function<Amount, Outcome> then) {
    if (!typed.tolerance().isBlank()) {
      return length(typed.tolerance(), then);
    }
    return hasSteps()
        ? then.apply(usualTolerance(typed.way()))
        : new Outcome.Refused("Say by how much it may differ, as the manual says.");
  }

  /** How near to a step counts as that step; half of it on a wall (common practice, no source). */
  public Amount usualTolerance(GoodsWay way) {
    Amount near = SizeSteps.near(usual());
    return way == GoodsWay.WALL
        ? new Amount(near.number().divide(BigDecimal.valueOf(HALVES)), near.unit())
        : near;
  }

  /** What is wrong with figures whatever they were measured with; empty where nothing is. */
  public static Optional<String> findFault(Amount reading, Amount standard, Amount tolerance) {
    if (reading.number().signum() <= 0 || tolerance.number().signum() < 0) {
      return Optional.of("A size is more than 0. Type it again.");
    }
    return reading.inBase().subtract(standard.inBase()).abs().compareTo(FAR_MM) > 0
        ? Optional.of(
            reading.text() + " and " + standard.text() + " are too far apart. Measure again.")
        : Optional.empty();
  }

  private Outcome judge(Typed typed, Amount reading, Amount standard, Amount tolerance) {
    Optional<Outcome> fault = findFault(reading, standard, tolerance).map(Outcome.Refused::new);
    return fault.orElseGet(() -> measured(typed, reading, standard, tolerance));
  }

  private Outcome measured(Typed typed, Amount reading, Amount standard, Amount tolerance) {
    return uncertainty(typed, reading)
        .map(off -> one(typed.way(), reading, off, standard, tolerance))
        .map(Gauging::judged)
        .orElseGet(() -> new Outcome.Refused("The job has no tool \"" + typed.tool() + "\"."));
  }

  private OneMeasured one(
      GoodsWay way, Amount reading, Amount off, Amount standard, Amount tolerance) {
    Amount step = line.size().findOff().orElse(new Amount(BigDecimal.ZERO, standard.unit()));
    return new OneMeasured(
        new GoodsMeasured(line.what(), line.size(), way, reading, off, standard, step, tolerance));
  }

  private static Outcome judged(OneMeasured one) {
    return one.canBeAccepted() ? new Outcome.Judged(one) : new Outcome.Refused(TOO_COARSE);
  }

  private Optional<Amount> uncertainty(Typed typed, Amount reading) {
    if (typed.tool().isBlank()) {
      return UsualTool.of(typed.way()).findOff(reading);
    }
    return job.measures()
        .findTool(typed.tool())
        .filter(one -> one.dimension() == Dimension.LENGTH)
        .map(one -> Amount.of(off(one, reading), reading.unit()));
  }

  private static double off(Tool tool, Amount reading) {
    return tool.uncertainty(reading.number().doubleValue(), reading.unit(), 1, 0);
  }

  private Unit usual() {
    return FigureParser.usual(job.units(), Dimension.LENGTH);
  }

  private Outcome length(String text, Function<Amount, Outcome> then) {
    return FigureParser.read(text, usual(), then, Outcome.Refused::new);
  }
}
