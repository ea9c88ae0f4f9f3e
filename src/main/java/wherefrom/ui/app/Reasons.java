package wherefrom.ui.app;

import java.util.List;
import java.util.function.Consumer;

/** Asks for a reason: one of several keys, or words of the person's own. */
public final class Reasons {
  private static final String OTHER = "other";

  private Reasons() {}

  /**
   * Asks; Back leaves without.
   *
   * @param reasons the last one, "other", opens the letter board
   */
  public static void ask(Desk desk, String title, List<String> reasons, Consumer<String> done) {
    List<Choice<String>> choices =
        reasons.stream().map(words -> new Choice<>(words, words, "")).toList();
    desk.navigator()
        .open(
            () -> new ChoiceScreen<>(desk, title, choices, words -> own(desk, title, words, done)));
  }

  private static void own(Desk desk, String title, String words, Consumer<String> done) {
    if (words.equals(OTHER)) {
      desk.navigator()
          .open(
              () ->
                  new TextEntryScreen(
                      desk,
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
