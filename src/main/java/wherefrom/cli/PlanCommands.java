package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Look;
import wherefrom.job.FigureParser;
import wherefrom.job.LoggedEntry;
import wherefrom.job.StandingRule;
import wherefrom.job.change.PlannedChange;
import wherefrom.job.change.Planning;
import wherefrom.job.entry.ChangeMade;
import wherefrom.job.tags.CodeLookup;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.size.ChangeText;

/** Changes: shown, planned, made, dropped; the checks that follow, and their answers. */
final class PlanCommands {
  private static final Option WHERE =
      Option.maybe("--where", "WHERE", "which one: 3EX, B3, R3, M2, left, lifter@3EX");
  private static final Option SIZE = Option.maybe("--size", "TEXT", "how much, as 0.010 in");
  private static final Option ONLY_SHOW =
      Option.flag("--preview", "show what follows; record nothing");
  private static final Option ALL =
      Option.flag("--all", "also what has passed, and what is forbidden");
  private static final String KINDS = "Kinds: " + Names.all(List.of(ChangeKind.values())) + ".";

  private PlanCommands() {}

  static List<Command> all() {
    return List.of(change(), list(), made(), drop(), checks(), answer(), PlanNumbersCommand.of());
  }

  private static Change change(OpenedJob bench, Call call, String kind) throws BadInput {
    ChangeKind found = Names.find(ChangeKind.class, "kind of change", kind);
    Unit usual = FigureParser.usual(bench.state().units(), Dimension.LENGTH);
    return ChangeText.read(found, call.text("--where"), call.text("--size"), usual);
  }

  private static void require(Planning.Answer given) throws BadInput {
    if (given instanceof Planning.Answer.Refused refused) {
      throw new BadInput(refused.sentence());
    }
  }

  private static Command change() {
    return Command.of(
            "plan change",
            "Shows what follows from a change and plans it. Only a plan: nothing is"
                + " stopped yet.",
            WHERE,
            SIZE,
            ONLY_SHOW)
        .takes("KIND")
        .noting(
            KINDS,
            "One line per consequence: effect and parts, rule, sentence, source. The last"
                + " line is its money, at the prices typed.")
        .tells(PlanCommands::change);
  }

  private static Row change(OpenedJob bench, Call call) throws BadInput {
    Change change = change(bench, call, call.operand("Give one kind of change."));
    Planning planning = new Planning(bench.job());
    Optional<String> fault = planning.findWrong(change);
    if (fault.isPresent()) {
      throw new BadInput(fault.get());
    }
    String against = planning.findContradiction(change).orElse("");
    if (call.has(ONLY_SHOW)) {
      return PlanRows.Whole.of("Only shown", 0, change, against, planning.preview(change), bench);
    }
    Planning.Answer planned = planning.plan(change);
    require(planned);
    PlannedChange plan = ((Planning.Answer.Planned) planned).plan();
    return PlanRows.Whole.of(
        "Plan " + plan.number(), plan.number(), change, against, plan.consequences(), bench);
  }

  private static Command list() {
    return Command.of("plan list", "Lists plans, what was made or found, and what each costs.")
        .lists((bench, call) -> rows(bench).stream());
  }

  private static List<PlanRows.Listed> rows(OpenedJob bench) {
    List<PlanRows.Listed> rows = new ArrayList<>();
    for (PlannedChange plan : new Planning(bench.job()).plans()) {
      rows.add(PlanRows.Listed.of(bench, plan.number(), "planned", plan.change()));
    }
    for (LoggedEntry logged : bench.state().standing()) {
      if (logged.entry() instanceof ChangeMade made) {
        rows.add(PlanRows.Listed.of(bench, made.plan(), "made", made.change()));
      }
    }
    for (Change change : new Planning(bench.job()).fromShop()) {
      rows.add(PlanRows.Listed.of(bench, 0, "made", change));
    }
    return rows;
  }

  private static Command made() {
    return Command.of(
            "plan made",
            "Records that a plan was carried out, a change made, or something found.",
            WHERE,
            SIZE)
        .takes("NUMBER|KIND")
        .noting(KINDS)
        .tells(PlanCommands::made);
  }

  private static Row made(OpenedJob bench, Call call) throws BadInput {
    String what = call.operand("Give one plan's number or kind of change.");
    Planning planning = new Planning(bench.job());
    Planning.Answer made =
        what.matches("\\d{1,6}")
            ? planning.carryOut(Integer.parseInt(what))
            : planning.make(change(bench, call, what));
    require(made);
    Planning.Answer.Made done = (Planning.Answer.Made) made;
    return PlanRows.Whole.of("Made", 0, done.change(), "", done.consequences(), bench);
  }

  private static Command drop() {
    return Command.of("plan drop", "Drops a plan again.", Option.maybe("--reason", "TEXT", "why"))
        .takes("NUMBER")
        .tells(PlanCommands::drop);
  }

  private static Row drop(OpenedJob bench, Call call) throws BadInput {
    String number = call.operand("Give one plan's number.");
    if (!number.matches("\\d{1,6}")) {
      throw call.wrong("\"" + number + "\" is not a plan's number.");
    }
    Planning.Answer dropped =
        new Planning(bench.job()).drop(Integer.parseInt(number), call.text("--reason"));
    require(dropped);
    return new PlanRows.Dropped(((Planning.Answer.Dropped) dropped).plan());
  }

  private static Command checks() {
    return Command.of(
            "plan checks", "Lists the checks that are open, or what applies to one part.", ALL)
        .takes("[CODE]")
        .noting("One line per check: its name, its answer, what to do, rule, source.")
        .lists((bench, call) -> standing(bench, call).stream().map(PlanRows.Check::of));
  }

  private static List<StandingRule> standing(OpenedJob bench, Call call) throws BadInput {
    Planning planning = new Planning(bench.job());
    if (call.operands().isEmpty()) {
      return call.has(ALL) ? planning.standing() : planning.openChecks();
    }
    CodeLookup found = bench.find(String.join("", call.operands()));
    if (found instanceof CodeLookup.APart part) {
      return bench.state().rules().listFor(part.part().part());
    }
    throw new BadInput("Give a part's code: " + Meaning.sentence(found));
  }

  private static Command answer() {
    return Command.of(
            "plan answer",
            "Answers a check by its name.",
            Option.needed("--answer", "ANSWER", "pass, suspect or fail"),
            Option.maybe("--note", "TEXT", "what was seen"))
        .takes("CHECK")
        .tells(PlanCommands::answer);
  }

  private static Row answer(OpenedJob bench, Call call) throws BadInput {
    Look look = Names.find(Look.class, "answer", call.get("--answer"));
    String check = CheckName.key(call.operand("Give one check."));
    Planning.Answer given = new Planning(bench.job()).answer(check, look, call.text("--note"));
    require(given);
    return new PlanRows.Answered(
        CheckName.shown(((Planning.Answer.Answered) given).answer().check()),
        look.word(),
        look == Look.PASS
            ? "Check: pass."
            : "Check: " + look.word() + ". It stays open. What waits for it stays stopped.");
  }
}
