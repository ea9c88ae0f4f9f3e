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
import wherefrom.job.ports.Equipment;

/** Readings: the plans there are, the results of a part or feature, a set of readings taken. */
final class MeasureCommand implements Command {
  private static final Option PLAN =
      Option.maybe("--plan", "KEY", "which readings, such as pushrod-length");
  private static final Option TOOL = Option.maybe("--tool", "NAME", "a tool of your list");
  private static final Option CONFIRMED =
      Option.flag("--confirmed", "keep readings that were questioned");
  private static final Option UNDECIDED =
      Option.flag("--undecided", "list the results that their uncertainty leaves open");
  private static final Option NOTE = Option.maybe("--note", "TEXT", "what else is to be known");

  private final Equipment equipment;

  MeasureCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of(
            "measure",
            "[CODE|FEATURE] [SIZE…]",
            "Lists the plans of readings; shows what was measured; takes readings.",
            Option.JOB,
            PLAN,
            TOOL,
            CONFIRMED,
            UNDECIDED,
            NOTE)
        .noting(
            "Sizes come in the plan's order, such as 0.3125in or 7.94mm; / parts repeats of one.",
            "Readings that look like a slip are not kept, and the status is 1, until --confirmed.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    Subjects.Call given = Subjects.split(call.operands());
    try (Bench bench = Bench.open(equipment, call, answer)) {
      if (call.has(UNDECIDED)) {
        undecided(bench, answer);
        return Status.RIGHT;
      }
      if (given.subject().isEmpty()) {
        ReadingPlans.all().forEach(plan -> plan(plan, answer));
        return Status.RIGHT;
      }
      Subject subject = Subjects.get(bench, given.subject().get());
      if (given.rest().isEmpty()) {
        show(bench, subject, answer);
        return Status.RIGHT;
      }
      return take(bench, subject, given.rest(), call, answer);
    }
  }

  private static void plan(ReadingPlan plan, Answer answer) {
    List<String> stations = plan.stations().stream().map(Station::words).toList();
    answer.row(
        Fields.of("plan", plan.key())
            .and("of", plan.of())
            .and("title", plan.title())
            .and("stations", stations)
            .and("how", plan.how())
            .and("source", plan.source()),
        Answer.cells(plan.key(), plan.of(), plan.title(), String.join("; ", stations)));
  }

  private static void show(Bench bench, Subject subject, Answer answer) {
    for (ReadingPlan plan : new Measuring(bench.job()).listPlans(subject)) {
      Optional<MeasuredResult> result =
          bench.job().state().measures().findResult(subject, plan.key());
      if (result.isPresent()) {
        ResultRows.add(bench, result.get(), answer);
      } else {
        answer.row(
            Fields.of("plan", plan.key()).and("measured", false),
            Answer.cells(plan.key(), "not measured"));
      }
    }
  }

  private static void undecided(Bench bench, Answer answer) {
    for (MeasuredResult result : bench.job().state().measures().all()) {
      if (result.worst() == wherefrom.inspection.Look.SUSPECT) {
        ResultRows.add(bench, result, answer);
      }
    }
  }

  private static Status take(
      Bench bench, Subject subject, List<String> sizes, Call call, Answer answer) throws BadInput {
    ReadingPlan plan =
        ReadingPlans.find(call.get(PLAN.name()))
            .orElseThrow(() -> new BadInput("There is no such plan: \"measure\" lists them."));
    if (sizes.size() > plan.stations().size()) {
      throw call.wrong(plan.title() + " has " + plan.stations().size() + " readings.");
    }
    Map<String, List<String>> readings = new LinkedHashMap<>();
    for (int at = 0; at < sizes.size(); at++) {
      readings.put(plan.stations().get(at).key(), List.of(sizes.get(at).split("/")));
    }
    Measuring.Answer came =
        new Measuring(bench.job())
            .take(
                new Measuring.Entry(
                    subject,
                    plan.key(),
                    call.get(TOOL.name()),
                    readings,
                    call.has(CONFIRMED),
                    call.find(NOTE.name()).orElse("")));
    if (came instanceof Measuring.Answer.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    if (came instanceof Measuring.Answer.Questioned questioned) {
      questioned.questions().forEach(question -> ask(question, answer));
      answer.say("Nothing is kept. Give --confirmed if the readings are right.");
      return Status.STOPPED;
    }
    answer.alone();
    ResultRows.add(bench, ((Measuring.Answer.Kept) came).result(), answer);
    return Status.RIGHT;
  }

  private static void ask(Question question, Answer answer) {
    answer.row(
        Fields.of("question", question.sentence()).and("station", question.station()),
        question.sentence());
  }
}
