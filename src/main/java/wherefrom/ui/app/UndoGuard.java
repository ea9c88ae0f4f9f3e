package wherefrom.ui.app;

import java.util.Optional;
import java.util.OptionalLong;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;

/**
 * Lets UNDO take back at once what was done on the screen that is up. A step of before, which
 * nobody sees there, is asked about: the same key pressed again takes it back. What was done in a
 * dialog over a screen, or by the press that led to it, was done on it.
 */
final class UndoGuard {
  private final ScreenContext context;
  private Optional<OpenJob> job = Optional.empty();
  private Optional<Screen> owner = Optional.empty();
  private long before;
  private long since;
  private OptionalLong asked = OptionalLong.empty();

  UndoGuard(ScreenContext context) {
    this.context = context;
  }

  private long sequence() {
    return context.job().map(OpenJob::sequence).orElse(0L);
  }

  /** A press begins: a message that was read goes with it. */
  void begin(Message message) {
    message.pass();
    begin();
  }

  /** A press or a scan begins. */
  void begin() {
    before = sequence();
  }

  /** A screen has come up; a dialog leaves the screen below it as it is. */
  void up(Screen screen) {
    if (!job.equals(context.job())) {
      job = context.job();
      begin();
    }
    if (screen.onJob() && !owner.equals(Optional.of(screen))) {
      owner = Optional.of(screen);
      since = before;
      asked = OptionalLong.empty();
    }
  }

  /** UNDO is pressed: takes back what was done here, or asks. */
  void press(Runnable takeBack) {
    if (!asks()) {
      takeBack.run();
    }
  }

  /** Whether UNDO has to be pressed again, which is then said. */
  boolean asks() {
    Screen screen = context.navigator().current();
    Optional<LoggedEntry> old =
        context.job().isEmpty()
            ? Optional.empty()
            : screen.undone(context).filter(step -> step.sequence() <= since);
    OptionalLong step = old.map(it -> OptionalLong.of(it.sequence())).orElse(OptionalLong.empty());
    if (step.isEmpty() || step.equals(asked)) {
      asked = OptionalLong.empty();
      return false;
    }
    asked = step;
    context.say("Press UNDO again to take back: " + screen.undoes(context) + ".");
    return true;
  }
}
