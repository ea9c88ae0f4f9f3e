package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Asks for a reason: one of several keys, or words of the person's own. */
public final class ReasonAsking {
  private ReasonAsking() {}

  /**
   * Asks; Back leaves without.
   *
   * @param reasons the last one, whatever it says, opens the letter board
   */
  public static void ask(
      ScreenContext context, String title, List<String> reasons, Consumer<String> done) {
    int last = reasons.size() - 1;
    List<Choice<Runnable>> choices = new ArrayList<>();
    for (String words : reasons.subList(0, last)) {
      choices.add(new Choice<>(() -> done.accept(words), words, ""));
    }
    choices.add(new Choice<>(() -> ownWords(context, title, done), reasons.get(last), ""));
    context.navigator().open(() -> new ChoiceScreen<>(context, title, choices, Runnable::run));
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
