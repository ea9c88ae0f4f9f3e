package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import wherefrom.job.numbers.Kept;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.workings.AmountInput;
import wherefrom.workings.ChoiceInput;
import wherefrom.workings.InputSpec;

/** Asks for one input, by pad or by a choice of words. */
final class Asking {
  private Asking() {}

  /**
   * @param text as it was typed before
   * @param none what leaves it without: {@code Not known}, {@code As now}
   */
  static void open(
      Desk desk, InputSpec input, String text, String none, Function<String, Kept> done) {
    if (input instanceof AmountInput amount) {
      desk.navigator().open(() -> new FigureScreen(desk, amount, text, none, done));
      return;
    }
    List<Choice<String>> choices = new ArrayList<>();
    for (String word : ((ChoiceInput) input).choices()) {
      choices.add(new Choice<>(word, word, ""));
    }
    choices.add(new Choice<>("", none, ""));
    desk.navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    desk,
                    input.meaning(),
                    choices,
                    chosen -> {
                      if (done.apply(chosen) instanceof Kept.Refused refused) {
                        desk.say(refused.sentence());
                      }
                    }));
  }
}
