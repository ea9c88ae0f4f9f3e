package wherefrom.workings;

import java.util.List;
import java.util.stream.Collectors;

/** The working needs more inputs. */
public record MissingInputs(List<InputSpec> inputs)
    implements WorkingAnswer, Evaluation, BackwardAnswer {
  public MissingInputs {
    inputs = List.copyOf(inputs);
  }

  /** Names what is missing; each input says itself what it is. */
  public String sentence() {
    return inputs.stream()
        .map(InputSpec::words)
        .collect(Collectors.joining(", ", "Still needed: ", "."));
  }
}
