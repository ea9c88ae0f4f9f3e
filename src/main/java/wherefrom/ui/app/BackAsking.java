package wherefrom.ui.app;

import java.util.List;
import java.util.Optional;
import wherefrom.job.shop.MachineShop;
import wherefrom.parts.Part;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.WayOut;

/** A part that is back is not done by that: what it was sent for is asked for. */
public final class BackAsking {
  private BackAsking() {}

  /**
   * Asks the same of what has no such tag, as a bag or a big part.
   *
   * @param from where it was; what was neither washed nor at the machine shop is asked nothing
   */
  public static void ask(ScreenContext context, Whereabouts from, Runnable done) {
    switch (from) {
      case WASHING -> ask(context, Optional.empty(), WayOut.BACK_FROM_WASHING, done);
      case AT_SHOP -> ask(context, Optional.empty(), WayOut.BACK_FROM_SHOP, done);
      default -> done.run();
    }
  }

  /**
   * Asks whether the part is washed, or the work on it done.
   *
   * @param deed back from washing, or from the machine shop
   * @param done what is done where it is
   */
  public static void ask(ScreenContext context, Optional<Part> part, WayOut deed, Runnable done) {
    boolean washed = deed == WayOut.BACK_FROM_WASHING;
    String question = washed ? "Is it clean and dry?" : "Is the work on it done?";
    String sent =
        washed
            ? ""
            : part.map(one -> new MachineShop(context.getJob()).sentFor(one.item())).orElse("");
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(done, "Yes", sent),
            new Choice<>(
                () -> context.say("Then it waits. Put it aside, with its tag on."),
                "No",
                washed ? "it stays off for washing" : "it stays at the machine shop"));
    context.navigator().open(() -> new ChoiceScreen<>(context, question, ways, Runnable::run));
  }
}
