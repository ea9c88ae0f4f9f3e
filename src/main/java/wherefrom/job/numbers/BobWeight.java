package wherefrom.job.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Layout;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.FigureParser;
import wherefrom.job.OpenJob;
import wherefrom.job.measure.WeightSet;
import wherefrom.quantity.Amount;
import wherefrom.quantity.AmountReading;
import wherefrom.quantity.AmountText;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.workings.ResultValue;

/**
 * The bob weight that a balancer hangs on each crank pin: what rotates, whole, and a share of what
 * goes up and down. Matched parts weigh as the lightest; the others are typed. The machinist's own
 * figure and share outrank it.
 */
public final class BobWeight {
  /** Half of what goes up and down, for most V8 engines: common practice, no source. */
  public static final String USUAL_SHARE = "0.5";

  private static final int EIGHT = 8;

  static final String SHEET = "bob-weight";

  /** What is typed of it; the id stands in the sheet. */
  public enum Typed {
    SHELLS("shells", "shells of one rod", Dimension.MASS),
    RINGS("rings", "rings of one piston", Dimension.MASS),
    LOCKS("locks", "pin locks of one piston", Dimension.MASS),
    OIL("oil", "oil on one crank pin", Dimension.MASS),
    RODS("rods", "rods on one crank pin", Dimension.NUMBER),
    SHARE("share", "share of what goes up and down", Dimension.NUMBER);

    private final String id;
    private final String words;
    private final Dimension dimension;

    Typed(String id, String words, Dimension dimension) {
      this.id = id;
      this.words = words;
      this.dimension = dimension;
    }

    public String id() {
      return id;
    }

    public String words() {
      return words;
    }

    public Dimension dimension() {
      return dimension;
    }

    public static Optional<Typed> find(String id) {
      return java.util.Arrays.stream(values()).filter(one -> one.id.equals(id)).findFirst();
    }
  }

  /**
   * The answer.
   *
   * @param missing what is still to be weighed or typed; empty when it is known
   * @param rotating on one crank pin, in grams
   * @param upAndDown on one crank pin, in grams, before the share is taken
   * @param bob rotating and the share of the rest
   */
  public record Answer(
      List<String> missing,
      Optional<ResultValue> rotating,
      Optional<ResultValue> upAndDown,
      Optional<ResultValue> bob) {
    public Answer {
      missing = List.copyOf(missing);
    }
  }

  private final OpenJob job;

  public BobWeight(OpenJob job) {
    this.job = job;
  }

  /** Whether the balancer hangs one on: inline and opposed cranks are balanced without. */
  public static boolean isUsed(Layout layout) {
    return layout.arrangement() == Arrangement.V;
  }

  /** Whether half is the usual share; that of other V engines the machinist says. */
  public static boolean hasUsualShare(Layout layout) {
    return isUsed(layout) && layout.cylinders().size() == EIGHT;
  }

  private Sheet sheet() {
    return new Sheets(job).find(SHEET).orElse(Sheet.empty("bob weight"));
  }

  /** A figure as typed; empty where there is none. */
  public String text(Typed what) {
    return sheet().figures().getOrDefault(what.id(), "");
  }

  /** Keeps a figure; weights without a unit are in grams. */
  public FigureOutcome set(Typed what, String text) {
    return FigureParser.read(
        text,
        job.state().units(),
        what.dimension(),
        amount -> keep(what, amount),
        FigureOutcome.Refused::new);
  }

  private FigureOutcome keep(Typed what, Amount amount) {
    double figure = amount.number().doubleValue();
    if (figure < 0 || (what == Typed.SHARE && figure > 1)) {
      return new FigureOutcome.Refused(
          what == Typed.SHARE ? "The share lies between 0 and 1." : "No weight is less than 0.");
    }
    if (what == Typed.RODS && figure != 1 && figure != 2) {
      return new FigureOutcome.Refused("One rod or two run on a crank pin.");
    }
    job.inOne(() -> new Sheets(job).keep(SHEET, sheet().with(what.id(), amount.text())));
    return new FigureOutcome.Done();
  }

  /** A weight and the variance of it. */
  private record Sum(double grams, double variance) {
    Sum plus(Sum other) {
      return new Sum(grams + other.grams, variance + other.variance);
    }

    /** So many alike: they were brought to one weight on one scale and are off together. */
    Sum times(double factor) {
      return new Sum(factor * grams, factor * factor * variance);
    }

    ResultValue value(String key, String words) {
      return new ResultValue(key, words, Unit.GRAM, grams, Math.sqrt(variance), List.of());
    }
  }

  /** Works it out, as far as everything is weighed. */
  public Answer answer() {
    if (!isUsed(job.state().layout())) {
      return new Answer(List.of(), Optional.empty(), Optional.empty(), Optional.empty());
    }
    List<String> missing = new ArrayList<>();
    Sum big = weighed("rod-big-weight", missing);
    Sum small = weighed("rod-small-weight", missing);
    Sum piston = weighed("piston-weight", missing);
    Sum pin = weighed("pin-weight", missing);
    Sum shells = typed(Typed.SHELLS, true, missing);
    Sum rings = typed(Typed.RINGS, true, missing);
    Sum locks = typed(Typed.LOCKS, false, missing);
    Sum oil = typed(Typed.OIL, false, missing);
    if (text(Typed.SHARE).isEmpty() && !hasUsualShare(job.state().layout())) {
      missing.add(Typed.SHARE.words());
    }
    if (!missing.isEmpty()) {
      return new Answer(missing, Optional.empty(), Optional.empty(), Optional.empty());
    }
    Sum rotating = big.plus(shells).times(rods()).plus(oil);
    Sum upAndDown = small.plus(piston).plus(pin).plus(rings).plus(locks).times(rods());
    return new Answer(
        missing,
        Optional.of(rotating.value("rotating", "rotating")),
        Optional.of(upAndDown.value("up-and-down", "up and down")),
        Optional.of(rotating.plus(upAndDown.times(share())).value("bob-weight", "bob weight")));
  }

  private Sum weighed(String key, List<String> missing) {
    var plan = ReadingPlans.find(key).orElseThrow();
    WeightSet set = WeightSet.of(job.state(), plan);
    Optional<WeightSet.Member> lightest = set.findLightest();
    List<String> unweighed = set.unweighed(job.state());
    if (!unweighed.isEmpty() || lightest.isEmpty()) {
      // One that was not weighed may be the lightest: to it all the others come.
      String some = lightest.isEmpty() ? "" : " of " + String.join(", ", unweighed);
      missing.add(plan.title().toLowerCase(java.util.Locale.ROOT) + some);
      return new Sum(0, 0);
    }
    double u = lightest.get().weight().standardUncertainty();
    return new Sum(lightest.get().weight().value(), u * u);
  }

  private Sum typed(Typed what, boolean needed, List<String> missing) {
    Optional<Amount> amount = amount(what, Unit.GRAM);
    if (needed && amount.isEmpty()) {
      missing.add(what.words());
    }
    return new Sum(amount.map(one -> one.in(Unit.GRAM)).orElse(0.0), 0);
  }

  private Optional<Amount> amount(Typed what, Unit usual) {
    return AmountText.read(text(what), usual) instanceof AmountReading.Understood understood
        ? Optional.of(understood.amount())
        : Optional.empty();
  }

  /** As many as share a crank pin, unless it was typed. */
  private double rods() {
    Layout layout = job.state().layout();
    double usual = (double) layout.cylinders().size() / layout.rodJournals();
    return amount(Typed.RODS, Unit.ONE).map(one -> one.number().doubleValue()).orElse(usual);
  }

  private double share() {
    return amount(Typed.SHARE, Unit.ONE)
        .map(one -> one.number().doubleValue())
        .orElse(Double.parseDouble(USUAL_SHARE));
  }

  /** What it is, or what is still to weigh; that there is none where the engine is no V. */
  public String sentence() {
    if (!isUsed(job.state().layout())) {
      return "Only V engines need one: common practice, no source.";
    }
    return slip().orElseGet(() -> "still to weigh: " + String.join(", ", answer().missing()));
  }

  /** For the machine shop's slip: {@code balance to a bob weight of 1823.4 g, share 0.5}. */
  public Optional<String> slip() {
    return answer()
        .bob()
        .map(
            bob ->
                "balance to a bob weight of "
                    + bob.amount().rounded(Unit.GRAM.decimals()).text()
                    + ", share "
                    + share());
  }
}
