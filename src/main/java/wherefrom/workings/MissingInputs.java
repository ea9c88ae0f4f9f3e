package wherefrom.workings;

import java.util.List;
import java.util.stream.Collectors;

/** The working needs more inputs. */
public record MissingInputs(List<InputSpec> inputs)
    implements WorkingAnswer, Evaluation, BackwardAnswer {
  public MissingInputs {
    inputs = List.copyOf(inputs);
  }

  /** Names what is missing and says what each is. */
  public String sentence() {
    return inputs.stream()
        .map(input -> input.words() + " (" + input.meaning() + ")")
        .collect(Collectors.joining("; ", "Still needed: ", "."));
  }
}
