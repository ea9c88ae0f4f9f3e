package wherefrom.job.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.engine.Bank;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.Spots;
import wherefrom.inspection.compare.OddOneOut;
import wherefrom.inspection.compare.StraightLine;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.job.OpenJob;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;

/** A set held against itself: the odd one out, and for studs the straightedge over the tops. */
public final class SetPictures {

  private static final String STUDS = "stud-height";

  private final OpenJob job;
  private final ReadingPlan plan;

  public SetPictures(OpenJob job, ReadingPlan plan) {
    this.job = job;
    this.plan = plan;
  }

  /** One for the set, or for studs one a bank. */
  public List<SetPicture> list() {
    Comparing comparing = new Comparing(job);
    List<SetPicture> pictures = new ArrayList<>();
    if (plan.key().equals(STUDS)) {
      for (Bank bank : job.state().layout().banks()) {
        comparing.studs(bank, List.of()).map(line -> line(bank, line)).ifPresent(pictures::add);
      }
    }
    if (pictures.isEmpty()) {
      comparing.compare(plan.key()).map(this::set).ifPresent(pictures::add);
    }
    return pictures;
  }

  private Unit unit() {
    return job.state().units() == UnitSystem.INCH ? Unit.INCH : Unit.MILLIMETRE;
  }

  private SetPicture line(Bank bank, StraightLine line) {
    double per = unit() == Unit.INCH ? 25.4 : 1;
    List<SetDot> dots =
        line.points().stream()
            .map(
                point ->
                    new SetDot(
                        point.name(),
                        point.proud() / per,
                        2 * point.u() / per,
                        brief(point.stand())))
            .toList();
    return new SetPicture(
        "Straightedge over the stud tops, " + bank.name() + " bank",
        "straightedge",
        studs(line, per),
        dots,
        unit().symbol());
  }

  private String studs(StraightLine line, double per) {
    List<String> said = new ArrayList<>();
    for (StraightLine.Point point : line.points()) {
      if (point.stand() != StraightLine.Stand.LEVEL) {
        said.add(
            point.name()
                + " stands high by "
                + figure(point.proud() / per)
                + " ± "
                + figure(2 * point.u() / per)
                + ": "
                + word(point.stand()));
      }
    }
    String practice =
        " (suspect from "
            + figure(StraightLine.SUSPECT_MM / per)
            + ", fail from "
            + figure(StraightLine.FAIL_MM / per)
            + ": common practice, no source)";
    return said.isEmpty()
        ? "No stud stands high" + practice + "."
        : String.join("; ", said) + practice + ".";
  }

  private static String brief(StraightLine.Stand stand) {
    return switch (stand) {
      case LEVEL -> "";
      case UNDECIDED -> "undecided";
      case SUSPECT -> "suspect";
      case FAIL -> "fail";
    };
  }

  private static String word(StraightLine.Stand stand) {
    return switch (stand) {
      case LEVEL -> "level";
      case UNDECIDED -> "undecided, measure it better";
      case SUSPECT -> "suspect";
      case FAIL -> "fail, it is pulling out";
    };
  }

  private String figure(double value) {
    int places = unit() == Unit.INCH ? 4 : 3;
    return String.format(Locale.ROOT, "%." + places + "f %s", value, unit().symbol());
  }

  private SetPicture set(OddOneOut set) {
    Unit in = new Comparing(job).unit(plan.key());
    double u = band();
    String all = set.middles().size() > 1 ? "its side" : "the set";
    List<SetDot> dots =
        set.members().stream()
            .map(
                member ->
                    new SetDot(
                        onPlot(member.name()), member.distance(), 2 * u, member.odd() ? "odd" : ""))
            .toList();
    return new SetPicture(
        plan.title() + ": each against the middle of " + all,
        "middle of " + all,
        odd(set, in),
        dots,
        in.symbol());
  }

  /** A cylinder is named by its number alone where the plot's title says what was read. */
  private static String onPlot(String name) {
    return bore(name).map(bore -> String.valueOf(bore.cylinder())).orElse(name);
  }

  private static String spoken(String name) {
    return bore(name).map(BoreSpot::brief).orElse(name);
  }

  private static Optional<BoreSpot> bore(String name) {
    return Spots.find(name).filter(BoreSpot.class::isInstance).map(BoreSpot.class::cast);
  }

  private double band() {
    Unit in = new Comparing(job).unit(plan.key());
    return job.state().measures().listResults(plan.key()).stream()
        .map(result -> result.findSize())
        .flatMap(Optional::stream)
        .mapToDouble(size -> size.standardUncertainty() * perBase(size.unit()) / perBase(in))
        .max()
        .orElse(0);
  }

  private static double perBase(Unit unit) {
    return unit.numerator().doubleValue() / unit.denominator().doubleValue();
  }

  private String odd(OddOneOut set, Unit in) {
    String middle = middles(set, in);
    if (set.isTooFew()) {
      return middle + ". Needs at least " + OddOneOut.FEWEST + " to name an odd one.";
    }
    if (set.odd().isEmpty()) {
      return middle + ". None is odd.";
    }
    List<String> said = new ArrayList<>();
    for (OddOneOut.Member member : set.odd()) {
      said.add(
          spoken(member.name())
              + ", "
              + number(Math.abs(member.distance()), in)
              + (member.distance() > 0 ? " above" : " below"));
    }
    return "Odd one out: " + String.join("; ", said) + ". " + middle + ".";
  }

  private static String middles(OddOneOut set, Unit in) {
    if (set.middles().size() == 1) {
      return "Middle of the set " + number(set.middles().get(0).median(), in);
    }
    return "Middle of "
        + set.middles().stream()
            .map(one -> one.side() + " " + number(one.median(), in))
            .collect(Collectors.joining(", of "));
  }

  private static String number(double value, Unit in) {
    return String.format(Locale.ROOT, "%." + in.decimals() + "f %s", value, in.symbol());
  }
}
