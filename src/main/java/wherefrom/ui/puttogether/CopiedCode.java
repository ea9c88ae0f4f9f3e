package wherefrom.ui.puttogether;

import java.util.List;
import wherefrom.job.tags.CodeLookup;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;

/**
 * A code that was typed while a stop shows it: it may be copied from the glass and says nothing of
 * the part in the hand.
 */
final class CopiedCode {
  private CopiedCode() {}

  /** Whether the stop that stands shows the code. */
  static boolean isShown(PutTogetherModel model, CodeLookup found) {
    return model.stop().isPresent()
        && found instanceof CodeLookup.APart one
        && model.answer().lines().stream()
            .anyMatch(
                line -> line.contains(one.part().part().code(model.state().engine()).typed()));
  }

  /** Asks whose tag it is; where it hangs on the part in the hand, it counts as typed. */
  static void ask(ScreenContext context, Runnable counts) {
    List<Choice<Runnable>> answers =
        List.of(
            new Choice<>(counts, "Yes", "and the other part is out of there"),
            new Choice<>(
                () -> context.say("Nothing is recorded. Type the code from the tag itself."),
                "No",
                "it was copied from the stop"));
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context, "Is this tag on the part in your hand?", answers, Runnable::run));
  }
}
