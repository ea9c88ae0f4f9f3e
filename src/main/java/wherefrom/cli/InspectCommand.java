package wherefrom.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wherefrom.inspection.Check;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.StandingRule;
import wherefrom.job.inspect.CheckCard;
import wherefrom.job.inspect.Inspecting;
import wherefrom.job.ports.Equipment;

/** Quick tests: what is left to look at, the cards of a part or feature, an answer. */
final class InspectCommand implements Command {
  private static final Option CHECK =
      Option.maybe("--check", "KEY", "which quick test, such as pushrod-roll");
  private static final Option ANSWER =
      Option.maybe("--answer", "WORD", "pass, suspect, fail or not-looked");
  private static final Option NOTE = Option.maybe("--note", "TEXT", "what was seen");
  private static final Option DIRTY =
      Option.flag("--before-washing", "only what is to be looked at before it is washed");

  private final Equipment equipment;

  InspectCommand(Equipment equipment) {
    this.equipment = equipment;
  }

  @Override
  public Usage usage() {
    return Usage.of(
            "inspect",
            "[CODE|FEATURE]",
            "Lists what nobody has looked at; shows a part's quick tests; keeps an answer.",
            Option.JOB,
            CHECK,
            ANSWER,
            NOTE,
            DIRTY)
        .noting("A FEATURE carries no tag and is named by its key, such as lobe@3EX.");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    Subjects.Call given = Subjects.split(call.operands());
    if (!given.rest().isEmpty()) {
      throw call.wrong("One part or feature at a time.");
    }
    try (Bench bench = Bench.open(equipment, call, answer)) {
      Inspecting inspecting = new Inspecting(bench.job());
      if (given.subject().isEmpty()) {
        return list(bench, inspecting, call.has(DIRTY), answer);
      }
      Subject subject = Subjects.get(bench, given.subject().get());
      Optional<String> check = call.find(CHECK.name());
      if (check.isEmpty()) {
        inspecting.cards(subject).forEach(card -> row(card, answer));
        return Status.RIGHT;
      }
      return keep(inspecting, subject, check.get(), call, answer);
    }
  }

  private static Status list(Bench bench, Inspecting inspecting, boolean dirty, Answer answer) {
    for (Inspecting.Unlooked one :
        dirty ? inspecting.listBeforeWashing() : inspecting.listUnlooked()) {
      List<String> keys = one.checks().stream().map(Check::key).toList();
      String code = Subjects.code(bench, one.subject());
      answer.row(
          Fields.of("subject", code).and("words", one.words()).and("checks", keys),
          Answer.cells(code, one.words(), String.join(" ", keys)));
    }
    return Status.RIGHT;
  }

  private static Fields fields(CheckCard card) {
    Check check = card.check();
    return Fields.of("check", check.key())
        .and("title", check.title())
        .and("answer", word(card.look()))
        .and("note", card.note())
        .and("how", check.how())
        .and("where", check.where())
        .and("pass", check.pass())
        .and("suspect", check.suspect())
        .and("fail", check.fail())
        .and("source", check.source());
  }

  private static void row(CheckCard card, Answer answer) {
    Check check = card.check();
    answer.row(
        fields(card),
        Answer.cells(check.key(), word(card.look()), check.title(), check.how(), card.note()));
  }

  private static Status keep(
      Inspecting inspecting, Subject subject, String check, Call call, Answer answer)
      throws BadInput {
    Look look = look(call);
    Inspecting.Answer kept =
        inspecting.answer(subject, check, look, call.find(NOTE.name()).orElse(""));
    if (kept instanceof Inspecting.Answer.Refused refused) {
      String keys =
          String.join(
              ", ", inspecting.cards(subject).stream().map(card -> card.check().key()).toList());
      throw new BadInput(refused.sentence() + " There are: " + keys + ".");
    }
    Inspecting.Answer.Kept done = (Inspecting.Answer.Kept) kept;
    List<String> follows = done.follows().stream().map(InspectCommand::words).toList();
    answer.alone();
    answer.row(
        fields(done.card()).and("follows", follows),
        done.card().check().key() + ": " + done.card().look().word(),
        String.join(System.lineSeparator(), follows));
    return Status.RIGHT;
  }

  private static String words(StandingRule rule) {
    return rule.consequence().rule()
        + ": "
        + rule.consequence().sentence()
        + " ("
        + rule.consequence().source()
        + ")";
  }

  private static Look look(Call call) throws BadInput {
    String word = call.get(ANSWER.name());
    return Arrays.stream(Look.values())
        .filter(look -> word(look).equals(word))
        .findFirst()
        .orElseThrow(() -> call.wrong("\"" + word + "\" is no answer: " + ANSWER.help() + "."));
  }

  private static String word(Look look) {
    return look == Look.NOT_LOOKED ? "not-looked" : look.name().toLowerCase(Locale.ROOT);
  }
}
