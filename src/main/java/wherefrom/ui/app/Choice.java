package wherefrom.ui.app;

import java.util.List;

/**
 * Something that can be chosen from a list.
 *
 * @param words what it is
 * @param more what else to know of it; may be empty
 * @param now whether it is what is chosen now
 */
public record Choice<T>(T value, String words, String more, boolean now) {
  public Choice(T value, String words, String more) {
    this(value, words, more, false);
  }

  /** The same, as the one that is chosen now, or not. */
  public Choice<T> now(boolean chosen) {
    return new Choice<>(value, words, more, chosen);
  }

  /** The same choices; the one of a value is what is chosen now. */
  public static <T> List<Choice<T>> now(List<Choice<T>> choices, T value) {
    return choices.stream().map(choice -> choice.now(choice.value().equals(value))).toList();
  }
}
