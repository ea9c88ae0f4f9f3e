package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.workings.AmountInput;
import wherefrom.workings.ChoiceInput;
import wherefrom.workings.InputSpec;

/** Asks for one input, by pad or by a choice of words. */
final class InputAsking {
  private InputAsking() {}

  /**
   * @param text as it was typed before
   * @param none what leaves it without: {@code Not known}, {@code As now}
   */
  static void open(
      ScreenContext context,
      InputSpec input,
      String text,
      String none,
      Function<String, FigureOutcome> done) {
    if (input instanceof AmountInput amount) {
      context.navigator().open(() -> new FigureScreen(context, amount, text, none, done));
      return;
    }
    List<Choice<String>> choices = new ArrayList<>();
    for (String word : ((ChoiceInput) input).choices()) {
      choices.add(new Choice<>(word, word, "").now(word.equals(text)));
    }
    choices.add(new Choice<>("", none, "").now(text.isEmpty()));
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    input.meaning(),
                    choices,
                    chosen -> {
                      if (done.apply(chosen) instanceof FigureOutcome.Refused refused) {
                        context.say(refused.sentence());
                      }
                    }));
  }
}
