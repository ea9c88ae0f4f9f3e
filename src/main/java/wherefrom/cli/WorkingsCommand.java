package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.workings.AmountInput;
import wherefrom.workings.ChoiceInput;
import wherefrom.workings.InputSpec;
import wherefrom.workings.InputText;
import wherefrom.workings.Inputs;
import wherefrom.workings.InputsReading;
import wherefrom.workings.MissingInputs;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingAnswer;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.Workings;

/** Lists the workings, or works one, forwards or backwards. */
final class WorkingsCommand {
  private static final Option SOLVE =
      Option.maybe("--solve", "KEY", "find this input, for the result given as RESULT=VALUE");
  private static final Option ABOUT =
      Option.flag("--about", "tell the formula, the inputs, the source and what is not known");

  private WorkingsCommand() {}

  static Command of() {
    return Command.of(
            "workings",
            "Lists the workings of a rebuild; with a name, works it from its inputs.",
            SOLVE,
            ABOUT)
        .takes("[NAME KEY=VALUE…]")
        .noting(
            "A value names its unit: bore=3.900in. The figure after ± or +- is the"
                + " standard uncertainty: bore=3.900in±0.0005in; with \"max\" after it, the"
                + " largest error.",
            "To solve backwards: workings compression-ratio --solve gasket-thickness ratio=9.5"
                + " bore=3.87in …")
        .does(WorkingsCommand::run);
  }

  private static Status run(Call call, Answer answer) throws BadInput {
    if (call.operands().isEmpty()) {
      Workings.all().forEach(each -> answer.row(AboutRow.of(each.card(), false)));
      return Status.RIGHT;
    }
    Working working = find(call.operands().get(0));
    if (call.has(ABOUT)) {
      return answer.only(AboutRow.of(working.card(), true));
    }
    List<String> texts = call.operands().subList(1, call.operands().size());
    Optional<String> unknown = call.find(SOLVE);
    return unknown.isPresent()
        ? new BackwardCall(working, unknown.get()).run(texts, answer)
        : worked(working.compute(read(working, texts)), answer);
  }

  private static Working find(String name) throws BadInput {
    return Workings.find(name)
        .orElseThrow(
            () ->
                new BadInput("There is no working \"" + name + "\". \"workings\" lists them all."));
  }

  private record InputRow(String key, String meaning, String takes, boolean required) {
    static InputRow of(InputSpec input) {
      String takes =
          input instanceof AmountInput amount
              ? amount.dimension().words()
              : String.join(", ", ((ChoiceInput) input).choices());
      return new InputRow(input.key(), input.meaning(), takes, input.required());
    }

    String wanted() {
      return required ? key : "[" + key + "]";
    }
  }

  private record AboutRow(
      String name,
      String title,
      String formula,
      String source,
      List<String> notKnown,
      List<InputRow> inputs,
      Row.Beside told)
      implements Row {
    static AboutRow of(WorkingCard card, boolean whole) {
      List<InputRow> inputs = card.inputs().stream().map(InputRow::of).toList();
      return new AboutRow(
          card.key(),
          card.title(),
          card.formula(),
          card.source().text(),
          card.limits(),
          inputs,
          new Row.Beside(whole ? lines(card, inputs) : line(card, inputs)));
    }

    private static String line(WorkingCard card, List<InputRow> inputs) {
      String wanted = inputs.stream().map(InputRow::wanted).collect(Collectors.joining(" "));
      return Answer.cells(card.key(), card.title(), wanted);
    }

    private static String lines(WorkingCard card, List<InputRow> inputs) {
      List<String> lines = new ArrayList<>(List.of(card.title(), card.formula()));
      lines.add("Source: " + card.source().text());
      card.limits().forEach(limit -> lines.add("Not known: " + limit));
      inputs.forEach(input -> lines.add(Answer.cells(input.wanted(), input.meaning())));
      return Row.lines(lines);
    }
  }

  static Inputs read(Working working, List<String> texts) throws BadInput {
    InputsReading reading = InputText.read(working, texts);
    if (reading instanceof InputsReading.NotUnderstood not) {
      throw new BadInput(not.nonsense().sentence());
    }
    return ((InputsReading.Understood) reading).inputs();
  }

  /** Answers with the result; what is missing or makes no sense is bad input. */
  static Status worked(WorkingAnswer worked, Answer answer) throws BadInput {
    return worked
        .<Ending>match(
            result -> () -> answer.only(WorkedRow.of(result)),
            missing -> Ending.bad(missing(missing)),
            nonsense -> Ending.bad(nonsense.sentence()))
        .end();
  }

  /** Each missing input with what it is. */
  static String missing(MissingInputs missing) {
    String each =
        missing.inputs().stream()
            .map(input -> input.key() + ": " + input.meaning())
            .collect(Collectors.joining(System.lineSeparator()));
    return missing.sentence() + System.lineSeparator() + each;
  }
}
