package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.Look;
import wherefrom.job.LoggedEntry;
import wherefrom.job.StandingRule;
import wherefrom.job.change.Plan;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.money.MoneyBook;
import wherefrom.job.money.PlanCost;
import wherefrom.job.ports.Equipment;
import wherefrom.job.tags.Found;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Consequence;

/** Changes: shown, planned, made, dropped; the checks that follow, and their answers. */
final class PlanCommands {
  private static final Option WHERE =
      Option.maybe("--where", "WHERE", "which one: 3EX, B3, R3, M2, left, lifter@3EX");
  private static final Option SIZE = Option.maybe("--size", "TEXT", "how much, as 0.010 in");
  private static final Option ONLY_SHOW = Option.flag("--only-show", "record nothing");
  private static final Option ALL = Option.flag("--all", "what is passed or forbidden, too");
  private static final String KINDS = "Kinds: " + Names.all(List.of(ChangeKind.values())) + ".";

  private PlanCommands() {}

  static List<Command> all(Equipment equipment) {
    return List.of(
        new JobCommand(
            Usage.of(
                    "plan change",
                    "KIND",
                    "Shows what follows from a change and plans it; nothing binds yet.",
                    Option.JOB,
                    WHERE,
                    SIZE,
                    ONLY_SHOW)
                .noting(
                    KINDS,
                    "A line a consequence: effect and parts, rule, sentence, source. The last line is its"
                        + " money, at the prices typed."),
            PlanCommands::change,
            equipment),
        new JobCommand(
            Usage.of(
                "plan list",
                "",
                "Lists plans, what was made or found, and what each costs.",
                Option.JOB),
            PlanCommands::list,
            equipment),
        new JobCommand(
            Usage.of(
                    "plan made",
                    "NUMBER|KIND",
                    "Records that a plan was carried out, a change made, or something found.",
                    Option.JOB,
                    WHERE,
                    SIZE)
                .noting(KINDS),
            PlanCommands::made,
            equipment),
        new JobCommand(
            Usage.of(
                "plan drop",
                "NUMBER",
                "Drops a plan again.",
                Option.JOB,
                Option.maybe("--reason", "TEXT", "why")),
            PlanCommands::drop,
            equipment),
        new JobCommand(
            Usage.of(
                    "plan checks",
                    "[CODE]",
                    "Lists the checks that are open, or what stands for one part.",
                    Option.JOB,
                    ALL)
                .noting("A line a check: its name, how it stands, what to do, rule, source."),
            PlanCommands::checks,
            equipment),
        new JobCommand(
            Usage.of(
                "plan answer",
                "CHECK",
                "Answers a check by its name.",
                Option.JOB,
                Option.needed("--look", "LOOK", "pass, suspect or fail"),
                Option.maybe("--note", "TEXT", "what was seen")),
            PlanCommands::answer,
            equipment));
  }

  private static String one(Call call, String what) throws BadInput {
    if (call.operands().size() != 1) {
      throw call.wrong("Give one " + what + ".");
    }
    return call.operands().get(0);
  }

  private static Change change(Call call, String kind) throws BadInput {
    ChangeKind found = Names.find(ChangeKind.class, "kind of change", kind);
    return new Change(found, call.find("--where").orElse(""), call.find("--size").orElse(""));
  }

  private static Status change(Bench bench, Call call, Answer answer) throws BadInput {
    Change change = change(call, one(call, "kind of change"));
    Planning planning = new Planning(bench.job());
    Optional<String> fault = planning.findWrong(change);
    if (fault.isPresent()) {
      throw new BadInput(fault.get());
    }
    Optional<String> against = planning.findContradiction(change);
    if (call.has(ONLY_SHOW)) {
      show(answer, "Only shown", 0, change, planning.preview(change), against, cost(bench, change));
      return Status.RIGHT;
    }
    Planning.Answer planned = planning.plan(change);
    if (planned instanceof Planning.Answer.Planned done) {
      Plan plan = done.plan();
      show(
          answer,
          "Plan " + plan.number(),
          plan.number(),
          change,
          plan.consequences(),
          against,
          cost(bench, change));
    }
    return Status.RIGHT;
  }

  private static void show(
      Answer answer,
      String head,
      int plan,
      Change change,
      List<Consequence> consequences,
      Optional<String> against,
      PlanCost cost) {
    List<String> lines = new ArrayList<>(List.of(head + ": " + change.words()));
    against.ifPresent(lines::add);
    List<Map<String, Object>> rows = new ArrayList<>();
    for (Consequence one : consequences) {
      lines.add(Answer.cells(one.headline(), one.rule(), one.sentence(), one.source()));
      rows.add(fields(one).all());
    }
    lines.add(Answer.cells("money", cost.sentence()));
    answer.only(
        Fields.of("plan", plan)
            .and("change", change.words())
            .and("contradiction", against.orElse(""))
            .and("consequences", rows)
            .and("items", MoneyEffect.rows(cost.lines()))
            .and("perhaps", MoneyEffect.rows(cost.perhaps()))
            .and("sum", cost.sum().text()),
        lines);
  }

  private static PlanCost cost(Bench bench, Change change) {
    return new MoneyBook(bench.job()).effect(change);
  }

  private static Fields fields(Consequence one) {
    return Fields.of("rule", one.rule())
        .and("key", one.key())
        .and("severity", one.severity().word())
        .and("effect", one.effect().words())
        .and("subject", one.subject())
        .and("pieces", one.pieces())
        .and("places", one.places().stream().map(place -> place.words()).toList())
        .and("sentence", one.sentence())
        .and("because", one.reasons())
        .and("source", one.source());
  }

  private static Status list(Bench bench, Call call, Answer answer) {
    for (Plan plan : new Planning(bench.job()).plans()) {
      row(bench, answer, plan.number(), "planned", plan.change());
    }
    for (LoggedEntry logged : bench.job().state().standing()) {
      if (logged.entry() instanceof ChangeMade made) {
        Change change = new Change(made.change(), made.where(), made.detail());
        row(bench, answer, made.plan(), "made", change);
      }
    }
    for (Change change : new Planning(bench.job()).fromShop()) {
      row(bench, answer, 0, "made", change);
    }
    return Status.RIGHT;
  }

  private static void row(Bench bench, Answer answer, int plan, String state, Change change) {
    MoneyBook book = new MoneyBook(bench.job());
    PlanCost cost = book.effect(change);
    long unpriced = cost.lines().stream().filter(item -> !item.priced()).count();
    answer.row(
        Fields.of("plan", plan)
            .and("state", state)
            .and("change", change.words())
            .and("sum", cost.sum().text())
            .and("unpriced", unpriced),
        Answer.cells(
            plan == 0 ? "-" : Integer.toString(plan),
            state,
            change.words(),
            book.budget().text(cost.sum())
                + (unpriced == 0 ? "" : ", " + unpriced + " without a price")));
  }

  private static Status made(Bench bench, Call call, Answer answer) throws BadInput {
    String what = one(call, "plan's number or kind of change");
    Planning planning = new Planning(bench.job());
    Planning.Answer made =
        what.matches("\\d{1,6}")
            ? planning.carryOut(Integer.parseInt(what))
            : planning.make(change(call, what));
    if (made instanceof Planning.Answer.Made done) {
      show(
          answer,
          "Made",
          0,
          done.change(),
          done.consequences(),
          Optional.empty(),
          cost(bench, done.change()));
    }
    return refused(made);
  }

  private static Status drop(Bench bench, Call call, Answer answer) throws BadInput {
    String number = one(call, "plan's number");
    if (!number.matches("\\d{1,6}")) {
      throw call.wrong("\"" + number + "\" is no plan's number.");
    }
    Planning.Answer dropped =
        new Planning(bench.job()).drop(Integer.parseInt(number), call.find("--reason").orElse(""));
    if (dropped instanceof Planning.Answer.Dropped done) {
      answer.only(Fields.of("dropped", done.plan()), "Plan " + done.plan() + " is dropped.");
    }
    return refused(dropped);
  }

  private static Status refused(Planning.Answer given) throws BadInput {
    if (given instanceof Planning.Answer.Refused refused) {
      throw new BadInput(refused.sentence());
    }
    return Status.RIGHT;
  }

  private static Status checks(Bench bench, Call call, Answer answer) throws BadInput {
    Planning planning = new Planning(bench.job());
    List<StandingRule> rules = call.has(ALL) ? planning.standing() : planning.openChecks();
    if (!call.operands().isEmpty()) {
      Found found = bench.find(String.join("", call.operands()));
      if (!(found instanceof Found.APart part)) {
        throw new BadInput("Give a part's code: " + Meaning.sentence(found));
      }
      rules = bench.job().state().rules().listFor(part.part().part());
    }
    rules.forEach(rule -> row(answer, rule));
    return Status.RIGHT;
  }

  private static void row(Answer answer, StandingRule rule) {
    Consequence one = rule.consequence();
    String state =
        !one.effect().isCheck()
            ? one.effect().words()
            : rule.answer().map(given -> given.look().word()).orElse("open");
    answer.row(
        fields(one).and("state", state),
        Answer.cells(one.key(), state, one.sentence(), one.rule(), one.source()));
  }

  private static Status answer(Bench bench, Call call, Answer answer) throws BadInput {
    Look look = Names.find(Look.class, "answer", call.get("--look"));
    Planning.Answer given =
        new Planning(bench.job()).answer(one(call, "check"), look, call.find("--note").orElse(""));
    if (given instanceof Planning.Answer.Answered done) {
      String sentence =
          look == Look.PASS
              ? "The check is passed."
              : "The check is not passed: it stays open and holds what waits for it.";
      answer.only(
          Fields.of("check", done.answer().check())
              .and("look", look.word())
              .and("sentence", sentence),
          sentence);
    }
    return refused(given);
  }
}
