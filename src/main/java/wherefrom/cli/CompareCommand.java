package wherefrom.cli;

import java.util.Locale;
import java.util.Optional;
import wherefrom.engine.Bank;
import wherefrom.inspection.compare.OddOneOut;
import wherefrom.inspection.compare.StraightLine;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.job.measure.Comparing;
import wherefrom.job.ports.Equipment;

/** Holds a set against itself: the odd one out, or the straightedge over the studs of a bank. */
final class CompareCommand implements Command {
  private static final Option PLAN =
      Option.needed("--plan", "KEY", "which readings, such as pushrod-length");
  private static final Option BANK =
      Option.maybe("--bank", "NAME", "lay a straightedge over the stud tops of this bank");

  private final Equipment equipment;

  CompareCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of(
        "compare",
        "",
        "Holds a set against itself and names the odd one out; status 1 where there is one.",
        Option.JOB,
        PLAN,
        BANK);
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    String plan = call.get(PLAN.name());
    if (ReadingPlans.find(plan).isEmpty()) {
      throw call.wrong("There is no plan \"" + plan + "\": \"measure\" lists them.");
    }
    try (Bench bench = Bench.open(equipment, call, answer)) {
      Optional<String> bank = call.find(BANK.name());
      return bank.isPresent()
          ? studs(bench, bank.get(), answer)
          : set(new Comparing(bench.job()).compare(plan), answer);
    }
  }

  private static Status set(Optional<OddOneOut> found, Answer answer) throws BadInput {
    OddOneOut set = found.orElseThrow(() -> new BadInput("Nothing is measured by this plan yet."));
    for (OddOneOut.Member member : set.members()) {
      answer.row(
          Fields.of("name", member.name())
              .and("value", member.value())
              .and("distance", member.distance())
              .and("odd", member.odd()),
          Answer.cells(
              member.name(),
              figure(member.value()),
              signed(member.distance()),
              member.odd() ? "odd" : ""));
    }
    if (set.isTooFew()) {
      answer.say("Of fewer than " + OddOneOut.FEWEST + " none can be called odd.");
    }
    return set.odd().isEmpty() ? Status.RIGHT : Status.STOPPED;
  }

  private static Status studs(Bench bench, String name, Answer answer) throws BadInput {
    Bank bank =
        bench.job().state().layout().banks().stream()
            .filter(each -> each.name().equals(name))
            .findFirst()
            .orElseThrow(() -> new BadInput("This engine has no bank \"" + name + "\"."));
    StraightLine line =
        new Comparing(bench.job())
            .studs(bank, java.util.List.of())
            .orElseThrow(
                () ->
                    new BadInput(
                        "Measure the height of at least "
                            + StraightLine.FEWEST
                            + " studs of the bank first."));
    for (StraightLine.Point point : line.points()) {
      String stand = point.stand().name().toLowerCase(Locale.ROOT);
      answer.row(
          Fields.of("name", point.name())
              .and("proud-mm", point.proud())
              .and("uncertainty-mm", point.u())
              .and("stand", stand),
          Answer.cells(point.name(), signed(point.proud()) + " mm", stand));
    }
    return line.proud().isEmpty() ? Status.RIGHT : Status.STOPPED;
  }

  private static String figure(double value) {
    return String.format(Locale.ROOT, "%.4f", value);
  }

  private static String signed(double value) {
    return String.format(Locale.ROOT, "%+.4f", value);
  }
}
