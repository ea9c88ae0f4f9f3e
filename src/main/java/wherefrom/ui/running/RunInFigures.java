package wherefrom.ui.running;

import java.util.Optional;
import java.util.function.Consumer;
import wherefrom.job.running.RunInPlan;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;

/** Speed and minutes of a run-in as the person types them from the cam's sheet. */
final class RunInFigures {
  private static final String TITLE = "From the cam's sheet";
  private static final int RPM = 4;
  private static final int MINUTES = 3;

  /** What was typed, until the run-in begins. */
  static final class Typed {
    private Optional<RunInPlan> plan = Optional.empty();
    private String anyway = "";

    Optional<RunInPlan> plan() {
      return plan;
    }

    /** Why it is to begin although something is open; empty where nobody said. */
    String anyway() {
      return anyway;
    }

    void anyway(String why) {
      anyway = why;
    }
  }

  private final ScreenContext context;
  private final Typed typed;

  RunInFigures(ScreenContext context, Typed typed) {
    this.context = context;
    this.typed = typed;
  }

  /** Asks for one figure after the other, then for the source. */
  void ask() {
    digits("Lowest speed, in rpm", RPM, this::askHigh);
  }

  private void askHigh(int low) {
    digits("Highest speed, in rpm", RPM, high -> askMinutes(low, high));
  }

  private void askMinutes(int low, int high) {
    digits("How many minutes in all", MINUTES, minutes -> askSource(low, high, minutes));
  }

  /** What cannot be is said before the source is asked for. */
  private void askSource(int low, int high, int minutes) {
    RunInPlan tried = new RunInPlan(low, high, minutes, TITLE);
    Consumer<String> done =
        source ->
            typed.plan =
                Optional.of(
                    new RunInPlan(tried.lowRpm(), tried.highRpm(), tried.minutes(), source));
    context.navigator().open(() -> new TextEntryScreen(context, "Which sheet says so?", "", done));
  }

  private interface Taker {
    void take(int number);
  }

  private void digits(String question, int most, Taker done) {
    Consumer<String> typedDone = text -> done.take(number(text));
    context
        .navigator()
        .open(() -> NumberEntryScreen.digits(context, TITLE, question, most, typedDone));
  }

  /**
   * @throws IllegalArgumentException with a plain sentence where nothing was typed
   */
  static int number(String digits) {
    if (digits.isEmpty()) {
      throw new IllegalArgumentException("Type the figure first.");
    }
    return Integer.parseInt(digits);
  }
}
