package wherefrom.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.ReadingPlans;
import wherefrom.inspection.measure.Station;
import wherefrom.job.ports.Equipment;
import wherefrom.job.MeasuredResult;
import wherefrom.job.measure.Measuring;

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

  static Command of(Equipment equipment) {
    return Command.of(
            "measure",
            "[CODE|FEATURE] [SIZE…]",
            "Lists the plans of readings; shows what was measured; takes readings.",
            Option.JOB,
            PLAN,
            TOOL,
            CONFIRMED,
            UNDECIDED,
            Option.maybe("--note", "TEXT", "what else is to be known"))
        .noting(
            "Sizes come in the plan's order, such as 0.3125in or 7.94mm; / parts repeats of one.",
            "Readings that look like a slip are not kept, and the status is 1, until --confirmed.")
        .onJob(equipment, MeasureCommand::run);
  }

  private static Status run(Bench bench, Call call, Answer answer) throws BadInput {
    Subjects.Call given = Subjects.split(call.operands());
    if (call.has(UNDECIDED)) {
      bench.state().measures().all().stream()
          .filter(result -> result.worst() == Look.SUSPECT)
          .forEach(result -> answer.row(ResultRow.of(bench, result)));
      return Status.RIGHT;
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

  private record PlanRow(
      String plan, String of, String title, List<String> stations, String how, String source)
      implements Row {
    static PlanRow of(ReadingPlan plan) {
      List<String> stations = plan.stations().stream().map(Station::words).toList();
      return new PlanRow(
          plan.key(), plan.of(), plan.title(), stations, plan.how(), plan.source());
    }

    @Override
    public String text() {
      return Answer.cells(plan, of, title, String.join("; ", stations));
    }
  }

  private record UnmeasuredRow(String plan, boolean measured) implements Row {
    @Override
    public String text() {
      return Answer.cells(plan, "not measured");
    }
  }

  private static Row measured(Bench bench, Subject subject, ReadingPlan plan) {
    Optional<MeasuredResult> result = bench.state().measures().findResult(subject, plan.key());
    return result.isPresent()
        ? ResultRow.of(bench, result.get())
        : new UnmeasuredRow(plan.key(), false);
  }

  private record QuestionRow(String question, String station) implements Row {
    @Override
    public String text() {
      return question;
    }
  }

  private static Status take(
      Bench bench, Subject subject, List<String> sizes, Call call, Answer answer) throws BadInput {
    Measuring.Answer came = new Measuring(bench.job()).take(entry(subject, sizes, call));
    if (came instanceof Measuring.Answer.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    if (came instanceof Measuring.Answer.Questioned questioned) {
      questioned.questions().stream()
          .map(each -> new QuestionRow(each.sentence(), each.station()))
          .forEach(answer::row);
      answer.say("Nothing is kept. Give --confirmed if the readings are right.");
      return Status.STOPPED;
    }
    return answer.only(ResultRow.of(bench, ((Measuring.Answer.Kept) came).result()));
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
        subject,
        plan.key(),
        call.get(TOOL),
        readings,
        call.has(CONFIRMED),
        call.text("--note"));
  }
}
