package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.workings.AmountInput;
import wherefrom.workings.InputSpec;
import wherefrom.workings.InputText;
import wherefrom.workings.Inputs;
import wherefrom.workings.InputsReading;
import wherefrom.workings.MissingInputs;
import wherefrom.workings.Nonsense;
import wherefrom.workings.Result;
import wherefrom.workings.Working;
import wherefrom.workings.WorkingAnswer;
import wherefrom.workings.WorkingCard;
import wherefrom.workings.catalogue.Workings;

/** Lists the workings, or works one, forwards or backwards. */
final class WorkingsCommand implements Command {
  private static final Option SOLVE =
      Option.maybe("--solve", "KEY", "find this input, for the result given as RESULT=VALUE");
  private static final Option ABOUT =
      Option.flag("--about", "tell the formula, the inputs, the source and what is not known");

  @Override
  public Usage usage() {
    return Usage.of(
            "workings",
            "[NAME KEY=VALUE…]",
            "Lists the workings of a rebuild; with a name, works it from its inputs.",
            SOLVE,
            ABOUT)
        .noting(
            "A value names its unit: bore=3.900in. Its standard uncertainty stands after ± or +-:"
                + " bore=3.900in±0.0005in; with \"max\" behind it the most that it can be off.",
            "To solve backwards: workings compression-ratio --solve gasket-thickness ratio=9.5"
                + " bore=3.87in …");
  }

  @Override
  public Status run(Call call, Answer answer) throws BadInput {
    if (call.operands().isEmpty()) {
      Workings.all().forEach(working -> list(working.card(), answer));
      return Status.RIGHT;
    }
    String name = call.operands().get(0);
    Working working =
        Workings.find(name)
            .orElseThrow(
                () ->
                    new BadInput(
                        "There is no working \"" + name + "\". \"workings\" lists them all."));
    if (call.has(ABOUT)) {
      answer.only(about(working.card()), aboutLines(working.card()));
      return Status.RIGHT;
    }
    List<String> texts = call.operands().subList(1, call.operands().size());
    Optional<String> unknown = call.find(SOLVE.name());
    return unknown.isPresent()
        ? new BackwardCall(working, unknown.get()).run(texts, answer)
        : forward(working, texts, answer);
  }

  private static void list(WorkingCard card, Answer answer) {
    String inputs =
        card.inputs().stream().map(WorkingsCommand::wanted).collect(Collectors.joining(" "));
    answer.row(about(card), Answer.cells(card.key(), card.title(), inputs));
  }

  private static String wanted(InputSpec input) {
    return input.required() ? input.key() : "[" + input.key() + "]";
  }

  private static Fields about(WorkingCard card) {
    return Fields.of("name", card.key())
        .and("title", card.title())
        .and("formula", card.formula())
        .and("source", card.source().text())
        .and("notKnown", card.limits())
        .and("inputs", card.inputs().stream().map(WorkingsCommand::field).toList());
  }

  private static Fields field(InputSpec input) {
    String takes =
        input instanceof AmountInput amount
            ? amount.dimension().words()
            : String.join(", ", ((wherefrom.workings.ChoiceInput) input).choices());
    return Fields.of("key", input.key())
        .and("meaning", input.meaning())
        .and("takes", takes)
        .and("required", input.required());
  }

  private static List<String> aboutLines(WorkingCard card) {
    List<String> lines = new ArrayList<>(List.of(card.title(), card.formula()));
    lines.add("Source: " + card.source().text());
    card.limits().forEach(limit -> lines.add("Not known: " + limit));
    card.inputs().forEach(input -> lines.add(Answer.cells(wanted(input), input.meaning())));
    return lines;
  }

  static Inputs read(Working working, List<String> texts) throws BadInput {
    InputsReading reading = InputText.read(working, texts);
    if (reading instanceof InputsReading.NotUnderstood not) {
      throw new BadInput(not.nonsense().sentence());
    }
    return ((InputsReading.Understood) reading).inputs();
  }

  private static Status forward(Working working, List<String> texts, Answer answer)
      throws BadInput {
    WorkingAnswer worked = working.compute(read(working, texts));
    if (worked instanceof Nonsense nonsense) {
      throw new BadInput(nonsense.sentence());
    }
    if (worked instanceof MissingInputs missing) {
      throw missing(missing);
    }
    Result result = (Result) worked;
    answer.only(ResultFields.of(result), ResultFields.lines(result));
    return Status.RIGHT;
  }

  /** Each missing input with what it is. */
  static BadInput missing(MissingInputs missing) {
    String each =
        missing.inputs().stream()
            .map(input -> input.key() + ": " + input.meaning())
            .collect(Collectors.joining(System.lineSeparator()));
    return new BadInput(missing.sentence() + System.lineSeparator() + each);
  }
}
