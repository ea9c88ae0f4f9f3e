package wherefrom.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.inspection.Check;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.StandingRule;
import wherefrom.job.inspect.CheckCard;
import wherefrom.job.inspect.Inspecting;
import wherefrom.rules.consequence.Consequence;

/** Quick tests: what is left to look at, the cards of a part or feature, an answer. */
final class InspectCommand {
  private static final Option CHECK =
      Option.maybe("--check", "KEY", "which quick test, such as pushrod-roll");
  private static final Option ANSWER =
      Option.maybe("--answer", "WORD", "pass, suspect, fail or not-looked");
  private static final Option DIRTY =
      Option.flag("--before-washing", "only what is to be looked at before it is washed");

  private InspectCommand() {}

  static Command of() {
    return Command.of(
            "inspect",
            "Lists what nobody has looked at; shows a part's quick tests; keeps an answer.",
            Option.JOB,
            CHECK,
            ANSWER,
            Option.maybe("--note", "TEXT", "what was seen"),
            DIRTY)
        .takes("[CODE|FEATURE]")
        .noting("A FEATURE carries no tag and is named by its key, such as lobe@3EX.")
        .does(
            (call, answer) -> {
              Subjects.Call given = Subjects.split(call.operands());
              if (!given.rest().isEmpty()) {
                throw call.wrong("One part or feature at a time.");
              }
              try (OpenedJob bench = OpenedJob.open(call, answer)) {
                return run(bench, given.subject(), call, answer);
              }
            });
  }

  private static Status run(OpenedJob bench, Optional<String> given, Call call, Answer answer)
      throws BadInput {
    Inspecting inspecting = new Inspecting(bench.job());
    if (given.isEmpty()) {
      (call.has(DIRTY) ? inspecting.listBeforeWashing() : inspecting.listUnlooked())
          .forEach(one -> answer.row(UnlookedRow.of(bench, one)));
      return Status.RIGHT;
    }
    Subject subject = Subjects.get(bench, given.get());
    Optional<String> check = call.find(CHECK);
    if (check.isEmpty()) {
      inspecting.cards(subject).forEach(card -> answer.row(new CardRow(card)));
      return Status.RIGHT;
    }
    return answer.only(keep(inspecting, subject, check.get(), call));
  }

  private record UnlookedRow(String subject, String words, List<String> checks) implements Row {
    static UnlookedRow of(OpenedJob bench, Inspecting.Unlooked one) {
      List<String> keys = one.checks().stream().map(Check::key).toList();
      return new UnlookedRow(Subjects.code(bench, one.subject()), one.words(), keys);
    }

    @Override
    public String text() {
      return Answer.cells(subject, words, String.join(" ", checks));
    }
  }

  private record CardRow(CheckCard card) implements Row {
    @Override
    public String text() {
      Check check = card.check();
      return Answer.cells(
          check.key(), Names.of(card.look()), check.title(), check.how(), card.note());
    }

    @Override
    public Map<String, Object> fields() {
      Check check = card.check();
      return Json.object(
          "check", check.key(),
          "title", check.title(),
          "answer", Names.of(card.look()),
          "note", card.note(),
          "how", check.how(),
          "where", check.where(),
          "pass", check.pass(),
          "suspect", check.suspect(),
          "fail", check.fail(),
          "source", check.source());
    }
  }

  private record KeptRow(CardRow kept, List<String> follows) implements Row {
    @Override
    public String text() {
      String head = kept.card().check().key() + ": " + kept.card().look().word();
      return Row.lines(head, Row.lines(follows));
    }
  }

  private static Row keep(Inspecting inspecting, Subject subject, String check, Call call)
      throws BadInput {
    Inspecting.Answer kept = inspecting.answer(subject, check, look(call), call.text("--note"));
    if (kept instanceof Inspecting.Answer.Refused refused) {
      List<String> keys =
          inspecting.cards(subject).stream().map(card -> card.check().key()).toList();
      throw new BadInput(refused.sentence() + " Use one of: " + String.join(", ", keys) + ".");
    }
    Inspecting.Answer.Kept done = (Inspecting.Answer.Kept) kept;
    List<String> follows = done.follows().stream().map(InspectCommand::words).toList();
    return new KeptRow(new CardRow(done.card()), follows);
  }

  private static String words(StandingRule rule) {
    Consequence one = rule.consequence();
    return one.ruleWords() + ": " + one.sentence() + " (" + one.source() + ")";
  }

  private static Look look(Call call) throws BadInput {
    String word = call.get(ANSWER);
    return Arrays.stream(Look.values())
        .filter(look -> Names.of(look).equals(word))
        .findFirst()
        .orElseThrow(() -> call.wrong("\"" + word + "\" is not an answer: " + ANSWER.help() + "."));
  }
}
