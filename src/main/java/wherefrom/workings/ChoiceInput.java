package wherefrom.workings;

import java.util.List;

/** An input that is one of a few words. */
public record ChoiceInput(
    String key, String words, String meaning, boolean required, List<String> choices)
    implements InputSpec {
  public ChoiceInput {
    choices = List.copyOf(choices);
  }

  /** A required choice. The key with spaces for hyphens is its name. */
  public static ChoiceInput of(String key, String meaning, String... choices) {
    return new ChoiceInput(key, key.replace('-', ' '), meaning, true, List.of(choices));
  }
}
