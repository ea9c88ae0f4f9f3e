package wherefrom.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.engine.Bank;
import wherefrom.inspection.compare.OddOneOut;
import wherefrom.inspection.compare.StraightLine;
import wherefrom.inspection.measure.ClearancePair;
import wherefrom.inspection.measure.ClearancePairs;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.FittingSize;
import wherefrom.job.OilClearances;
import wherefrom.job.PairClearances;
import wherefrom.job.SurfaceSize;
import wherefrom.job.SurfaceSizes;
import wherefrom.job.measure.Comparing;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;

/** Sizes held against each other: sets, stud tops, oil clearances, what fits. */
final class SizeCommands {
  private static final Option PLAN =
      Option.needed("--plan", "KEY", "which readings, such as pushrod-length");
  private static final Option BANK =
      Option.maybe("--bank", "NAME", "lay a straightedge over the stud tops of this bank");
  private static final Option PAIR =
      Option.maybe("--pair", "KEY", "of a pair instead, such as piston-to-bore");
  private static final String NONE = "-";

  private SizeCommands() {}

  static List<Command> all() {
    return List.of(
        Command.of(
                "compare",
                "Compares a set and names the odd one out; status 1 where there is one.",
                Option.JOB,
                PLAN,
                BANK)
            .does((call, answer) -> compare(call, answer)),
        Command.of(
                "clearance",
                "Works out the oil clearance of every bearing from housing, shells and journal;"
                    + " or of a pair.",
                PAIR)
            .noting("Pairs: " + String.join(", ", pairs()) + "; all: those measured.")
            .lists(SizeCommands::clearances),
        Command.of(
                "sizes",
                "Lists every journal and bore: standard, as cut, as measured, what fits it.")
            .noting("What is to be bought, for cuts that are only planned too: decide buy.")
            .lists(
                (bench, call) -> {
                  SurfaceSizes sizes = new SurfaceSizes(bench.state());
                  return sizes.list().stream()
                      .map(size -> SizeRow.of(size, sizes.getFitting(size)));
                }));
  }

  private static List<String> pairs() {
    return ClearancePairs.all().stream().map(ClearancePair::key).toList();
  }

  private static Stream<? extends Row> clearances(OpenedJob bench, Call call) throws BadInput {
    PairClearances clearances = new PairClearances(bench.state());
    Optional<String> wanted = call.find(PAIR);
    if (wanted.isEmpty()) {
      return new OilClearances(bench.state()).list().stream().map(ClearanceRow::of);
    }
    if (wanted.get().equals("all")) {
      return clearances.measured().stream().map(PairRow::of);
    }
    ClearancePair pair =
        ClearancePairs.find(wanted.get())
            .orElseThrow(() -> call.wrong("Use one of: " + String.join(", ", pairs()) + "."));
    return clearances.list(pair).stream().map(PairRow::of);
  }

  private static Status compare(Call call, Answer answer) throws BadInput {
    String plan = call.get(PLAN);
    if (ReadingPlans.find(plan).isEmpty()) {
      throw call.wrong("There is no plan \"" + plan + "\": \"measure\" lists them.");
    }
    try (OpenedJob bench = OpenedJob.open(call, answer)) {
      Optional<String> bank = call.find(BANK);
      return bank.isPresent()
          ? studs(bench, bank.get(), answer)
          : set(new Comparing(bench.job()), plan, answer);
    }
  }

  private record MemberRow(String name, double value, double distance, String unit, boolean odd)
      implements Row {
    static MemberRow of(OddOneOut.Member member, Unit unit) {
      return new MemberRow(
          member.name(), member.value(), member.distance(), unit.symbol(), member.odd());
    }

    @Override
    public String text() {
      String figure = String.format(Locale.ROOT, "%.4f %s", value, unit);
      return Answer.cells(name, figure, signed(distance) + " " + unit, odd ? "odd" : "");
    }
  }

  private static Status set(Comparing comparing, String plan, Answer answer) throws BadInput {
    OddOneOut set =
        comparing
            .compare(plan)
            .orElseThrow(() -> new BadInput("Nothing is measured by this plan yet."));
    Unit unit = comparing.unit(plan);
    set.members().forEach(each -> answer.row(MemberRow.of(each, unit)));
    if (set.isTooFew()) {
      answer.say("With fewer than " + OddOneOut.FEWEST + " none can be named odd.");
    }
    return Status.stoppedIf(!set.odd().isEmpty());
  }

  /** How far a stud stands proud: in words in the job's unit, as data in mm as its names say. */
  private record StudRow(StraightLine.Point point, Unit unit) implements Row {
    private String stand() {
      return point.stand().name().toLowerCase(Locale.ROOT);
    }

    @Override
    public String text() {
      double proud = Amount.of(point.proud(), Unit.MILLIMETRE).in(unit);
      return Answer.cells(point.name(), signed(proud) + " " + unit.symbol(), stand());
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "name", point.name(),
          "high-mm", point.proud(),
          "uncertainty-mm", point.u(),
          "stand", stand());
    }
  }

  private static Status studs(OpenedJob bench, String name, Answer answer) throws BadInput {
    Bank bank =
        bench.state().layout().banks().stream()
            .filter(each -> each.name().equals(name))
            .findFirst()
            .orElseThrow(() -> new BadInput("This engine has no bank \"" + name + "\"."));
    StraightLine line =
        new Comparing(bench.job())
            .studs(bank, List.of())
            .orElseThrow(
                () ->
                    new BadInput(
                        "Measure the height of at least "
                            + StraightLine.FEWEST
                            + " studs of the bank first."));
    Unit unit = bench.state().units().unit(Dimension.LENGTH);
    line.points().forEach(point -> answer.row(new StudRow(point, unit)));
    return Status.stoppedIf(!line.proud().isEmpty());
  }

  private static String signed(double value) {
    return String.format(Locale.ROOT, "%+.4f", value);
  }

  private record SizeRow(
      String what, String standard, String asCut, String measured, String step, String fits)
      implements Row {
    static SizeRow of(SurfaceSize size, FittingSize fits) {
      return new SizeRow(
          size.words(),
          text(size.standard()),
          text(size.asCut()),
          text(size.mostWorn()),
          text(fits.step().filter(step -> fits.isKnown())),
          fits.words());
    }

    private static String text(Optional<Amount> amount) {
      return amount.map(Amount::text).orElse("");
    }

    private static String orNone(String size) {
      return size.isEmpty() ? NONE : size;
    }

    @Override
    public String text() {
      return Answer.cells(what, orNone(standard), orNone(asCut), orNone(measured), fits);
    }
  }
}
