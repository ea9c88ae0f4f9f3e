package wherefrom.ui.app;

import java.util.List;
import java.util.function.Consumer;

/** Asks for a reason: one of several keys, or words of the person's own. */
public final class ReasonAsking {
  private static final String OTHER = "other";

  private ReasonAsking() {}

  /**
   * Asks; Back leaves without.
   *
   * @param reasons the last one, "other", opens the letter board
   */
  public static void ask(
      ScreenContext context, String title, List<String> reasons, Consumer<String> done) {
    List<Choice<String>> choices =
        reasons.stream().map(words -> new Choice<>(words, words, "")).toList();
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context, title, choices, words -> own(context, title, words, done)));
  }

  private static void own(
      ScreenContext context, String title, String words, Consumer<String> done) {
    if (words.equals(OTHER)) {
      context
          .navigator()
          .open(
              () ->
                  new TextEntryScreen(
                      context,
                      title,
                      "",
                      typed -> {
                        if (!typed.isBlank()) {
                          done.accept(typed);
                        }
                      }));
    } else {
      done.accept(words);
    }
  }
}
