package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.text.UsualWords;

/** Asks for a reason: one of several keys, or words of the person's own. */
public final class ReasonAsking {
  private ReasonAsking() {}

  /** Asks; Back leaves without. */
  public static void ask(
      ScreenContext context, String title, UsualWords offered, Consumer<String> done) {
    List<Choice<Runnable>> keys = new ArrayList<>();
    for (String words : offered.usual()) {
      keys.add(new Choice<>(() -> done.accept(words), words, ""));
    }
    ask(context, title, keys, offered.own(), done);
  }

  /**
   * Asks by keys that are more than their words; Back leaves without.
   *
   * @param usual the keys, and what each does
   * @param own what stands on the key that opens the letter board
   * @param typed is given the person's own words
   */
  public static void ask(
      ScreenContext context,
      String title,
      List<Choice<Runnable>> usual,
      String own,
      Consumer<String> typed) {
    List<Choice<Runnable>> keys = new ArrayList<>(usual);
    keys.add(new Choice<>(() -> ownWords(context, title, typed), own, ""));
    context.navigator().open(() -> new ChoiceScreen<>(context, title, keys, Runnable::run));
  }

  private static void ownWords(ScreenContext context, String title, Consumer<String> done) {
    Consumer<String> filled =
        typed -> {
          if (!typed.isBlank()) {
            done.accept(typed);
          }
        };
    context.navigator().open(() -> new TextEntryScreen(context, title, "", filled));
  }
}
