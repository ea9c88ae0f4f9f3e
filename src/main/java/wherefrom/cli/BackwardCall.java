package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.workings.AmountInput;
import wherefrom.workings.Backward;
import wherefrom.workings.BackwardAnswer;
import wherefrom.workings.Inputs;
import wherefrom.workings.NoAnswer;
import wherefrom.workings.Solution;
import wherefrom.workings.Working;

/** Works backwards from a result to an unknown input. */
final class BackwardCall {
  private final Working working;
  private final String unknown;

  BackwardCall(Working working, String unknown) {
    this.working = working;
    this.unknown = unknown;
  }

  /** One of the texts is {@code RESULT=VALUE}, a key that is no input: the wanted result. */
  Status run(List<String> texts, Answer answer) throws BadInput {
    if (working.card().findInput(unknown).filter(AmountInput.class::isInstance).isEmpty()) {
      throw new BadInput("\"" + unknown + "\" is not a figure that this working takes.");
    }
    List<String> known = new ArrayList<>();
    List<String> wanted = new ArrayList<>();
    for (String text : texts) {
      boolean input = working.card().findInput(text.split("=", 2)[0].strip()).isPresent();
      (input ? known : wanted).add(text);
    }
    if (wanted.size() != 1 || !wanted.get(0).contains("=")) {
      throw new BadInput("Give the one result that is wanted as RESULT=VALUE, such as ratio=9.5.");
    }
    String[] parts = wanted.get(0).split("=", 2);
    return solve(WorkingsCommand.read(working, known), parts[0].strip(), parts[1], answer);
  }

  private Status solve(Inputs known, String result, String value, Answer answer) throws BadInput {
    Amount wanted = TypedAmount.read(value, Unit.ONE);
    return answered(known, result, wanted)
        .<Ending>match(
            solution -> () -> answer.only(solved(solution)),
            none -> () -> unsolved(none, answer),
            missing -> Ending.bad(WorkingsCommand.missing(missing)),
            nonsense -> Ending.bad(nonsense.sentence()))
        .end();
  }

  private static Status unsolved(NoAnswer none, Answer answer) {
    answer.only(
        new Row.Told(none.sentence(), Json.object("solved", false, "sentence", none.sentence())));
    return Status.STOPPED;
  }

  private static Row solved(Solution solution) {
    WorkedRow.Value input = new WorkedRow.Value(solution.unknown());
    WorkedRow with = WorkedRow.of(solution.result());
    Map<String, Object> fields =
        Json.object("solved", true, "unknown", input.fields(), "with", with.fields());
    return new Row.Told(Row.lines(input.text(), with.text()), fields);
  }

  private BackwardAnswer answered(Inputs known, String result, Amount wanted) throws BadInput {
    try {
      return Backward.solve(working, known, unknown, result, wanted);
    } catch (IllegalArgumentException e) {
      throw new BadInput("\"" + result + "\" is not a result of this working.");
    }
  }
}
