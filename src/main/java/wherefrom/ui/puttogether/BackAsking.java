package wherefrom.ui.puttogether;

import java.util.List;
import wherefrom.rules.WayOut;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;

/** A part that is back is not done by that: what it was sent for is asked for. */
final class BackAsking {
  private BackAsking() {}

  static void ask(ScreenContext context, StopModel stopped, WayOut deed, Runnable done) {
    boolean washed = deed == WayOut.BACK_FROM_WASHING;
    String question = washed ? "Is it clean and dry?" : "Is the work on it done?";
    String sent = washed ? "" : stopped.sentFor();
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(done, "Yes", sent),
            new Choice<>(
                () -> context.say("Then it waits. Put it aside, with its tag on."),
                "No",
                "it stays recorded as away"));
    context.navigator().open(() -> new ChoiceScreen<>(context, question, ways, Runnable::run));
  }
}
