package wherefrom.workings;

import java.util.List;
import java.util.Optional;

/**
 * What a working says about itself.
 *
 * @param key the name on the command line, such as {@code compression-ratio}
 * @param title the name on a screen
 * @param inputs what it takes
 * @param formula the formula as shown
 * @param source where the formula comes from
 * @param limits what the formula leaves out or does not know, a sentence each
 */
public record WorkingCard(
    String key,
    String title,
    List<? extends InputSpec> inputs,
    String formula,
    Source source,
    List<String> limits) {
  public WorkingCard {
    inputs = List.copyOf(inputs);
    limits = List.copyOf(limits);
  }

  public Optional<InputSpec> findInput(String inputKey) {
    return inputs.stream()
        .filter(input -> input.key().equals(inputKey))
        .<InputSpec>map(input -> input)
        .findFirst();
  }
}
