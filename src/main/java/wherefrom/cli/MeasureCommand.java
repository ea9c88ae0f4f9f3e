package wherefrom.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Question;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.inspection.measure.Station;
import wherefrom.job.MeasuredResult;
import wherefrom.job.measure.Measuring;
import wherefrom.job.measure.Undecided;

/** Readings: the plans there are, the results of a part or feature, a set of readings taken. */
final class MeasureCommand {
  private static final Option PLAN =
      Option.maybe("--plan", "KEY", "which readings, such as pushrod-length");
  private static final Option TOOL = Option.maybe("--tool", "NAME", "a tool of your list");
  private static final Option CONFIRMED =
      Option.flag("--confirmed", "keep readings that were questioned");
  private static final Option UNDECIDED =
      Option.flag("--undecided", "list the results that their uncertainty leaves open");

  private MeasureCommand() {}

  static Command of() {
    return Command.of(
            "measure",
            "Lists the plans of readings; shows what was measured; takes readings.",
            PLAN,
            TOOL,
            CONFIRMED,
            UNDECIDED,
            Option.maybe("--note", "TEXT", "what else is to be known"))
        .takes("[CODE|FEATURE] [SIZE…]")
        .noting(
            "Sizes come in the plan's order, such as 0.3125in or 7.94mm; / separates"
                + " repeats of one.",
            "Readings that look like a slip are not kept, and the status is 1, until --confirmed.")
        .onJob(MeasureCommand::run);
  }

  private static Status run(OpenedJob bench, Call call, Answer answer) throws BadInput {
    Subjects.Call given = Subjects.split(call.operands());
    if (call.has(UNDECIDED)) {
      return undecided(bench, answer);
    }
    if (given.subject().isEmpty()) {
      ReadingPlans.all().forEach(plan -> answer.row(PlanRow.of(plan)));
      return Status.RIGHT;
    }
    Subject subject = Subjects.get(bench, given.subject().get());
    if (given.rest().isEmpty()) {
      new Measuring(bench.job())
          .listPlans(subject)
          .forEach(plan -> answer.row(measured(bench, subject, plan)));
      return Status.RIGHT;
    }
    return take(bench, subject, given.rest(), call, answer);
  }

  private static Status undecided(OpenedJob bench, Answer answer) {
    Undecided open = Undecided.of(bench.state());
    open.results().forEach(result -> answer.row(new ResultRow(bench, result)));
    open.bearings().forEach(bearing -> answer.row(ClearanceRow.of(bearing)));
    open.pairs().forEach(pair -> answer.row(PairRow.of(pair)));
    return Status.RIGHT;
  }

  private record PlanRow(ReadingPlan plan, List<String> stations) implements Row {
    static PlanRow of(ReadingPlan plan) {
      return new PlanRow(plan, plan.stations().stream().map(Station::words).toList());
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "plan", plan.key(),
          "of", plan.of(),
          "title", plan.title(),
          "stations", stations,
          "how", plan.how(),
          "source", plan.source());
    }

    @Override
    public String text() {
      return Answer.cells(plan.key(), plan.of(), plan.title(), String.join("; ", stations));
    }
  }

  private static Row measured(OpenedJob bench, Subject subject, ReadingPlan plan) {
    Optional<MeasuredResult> result = bench.state().measures().findResult(subject, plan.key());
    return result.isPresent()
        ? new ResultRow(bench, result.get())
        : new Row.Told(
            Answer.cells(plan.key(), "not measured"),
            Json.object("plan", plan.key(), "measured", false));
  }

  private static Status take(
      OpenedJob bench, Subject subject, List<String> sizes, Call call, Answer answer)
      throws BadInput {
    Measuring.Answer came = new Measuring(bench.job()).take(entry(subject, sizes, call));
    return came.<Ending>match(
            kept -> () -> answer.only(new ResultRow(bench, kept.result())),
            asked -> () -> questioned(asked.questions(), answer),
            refused -> Ending.bad(refused.sentence()))
        .end();
  }

  private static Status questioned(List<Question> questions, Answer answer) {
    for (Question each : questions) {
      answer.row(
          new Row.Told(
              each.sentence(),
              Json.object("question", each.sentence(), "station", each.station())));
    }
    answer.say("Nothing is kept. Give --confirmed if the readings are right.");
    return Status.STOPPED;
  }

  private static Measuring.Entry entry(Subject subject, List<String> sizes, Call call)
      throws BadInput {
    ReadingPlan plan =
        ReadingPlans.find(call.get(PLAN))
            .orElseThrow(() -> new BadInput("There is no such plan: \"measure\" lists them."));
    if (sizes.size() > plan.stations().size()) {
      throw call.wrong(plan.title() + " has " + plan.stations().size() + " readings.");
    }
    Map<String, List<String>> readings = new LinkedHashMap<>();
    for (int at = 0; at < sizes.size(); at++) {
      readings.put(plan.stations().get(at).key(), List.of(sizes.get(at).split("/")));
    }
    return new Measuring.Entry(
        subject, plan.key(), call.get(TOOL), readings, call.has(CONFIRMED), call.text("--note"));
  }
}
