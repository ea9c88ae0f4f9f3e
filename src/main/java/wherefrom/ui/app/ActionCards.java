package wherefrom.ui.app;

import java.util.function.Supplier;
import wherefrom.parts.Action;

/**
 * What the action cards do on every screen that does nothing of its own with them, so that a job
 * goes from its first sheet to its last by a scanner alone: NEXT leads the ring from key to key,
 * YES presses the key that has it, or the tag, and one that is to be held when it comes twice; SKIP
 * goes back, REPEAT says the last sentence again.
 */
final class ActionCards {
  /** Said to the first card on a key that has to be held. */
  private static final String AGAIN = "Scan YES once more to do it.";

  private final ScreenContext context;
  private final Supplier<Screen> current;
  private final FocusWalk walk;
  private final Runnable takeBack;
  private final Runnable help;
  private final UndoGuard guard;
  private final Supplier<String> said;

  /**
   * @param guard says whether UNDO has to be given again
   * @param said the sentence that was said last; may be empty
   */
  ActionCards(
      ScreenContext context,
      Supplier<Screen> current,
      FocusWalk walk,
      Runnable takeBack,
      Runnable help,
      UndoGuard guard,
      Supplier<String> said) {
    this.context = context;
    this.current = current;
    this.walk = walk;
    this.takeBack = takeBack;
    this.help = help;
    this.guard = guard;
    this.said = said;
  }

  /**
   * Does what a card says here.
   *
   * @return whether it was done; a card that the screen wants for itself is left to it
   */
  boolean take(Action card) {
    if (card == Action.UNDO && current.get().onJob() && guard.asks()) {
      return true;
    }
    if (card == Action.SKIP || card == Action.HELP) {
      walk.forget();
    }
    boolean own = current.get() instanceof Scannable screen && screen.takes(card);
    if (own) {
      return false;
    }
    switch (card) {
      case UNDO -> undo();
      case SKIP -> back();
      case NEXT -> walk.step(false);
      case REPEAT -> repeat();
      case HELP -> help.run();
      case YES -> yes();
    }
    return true;
  }

  private void undo() {
    if (current.get().onJob() && context.job().isPresent()) {
      takeBack.run();
    } else {
      context.say("There is nothing to take back here.");
    }
  }

  /** On a stop there is no way back but the ways out of it. */
  private void back() {
    if (!WholeGlass.is(current.get()) || current.get() instanceof Typable) {
      context.navigator().goBack();
    }
  }

  private void repeat() {
    String last = said.get();
    context.say(last.isEmpty() ? "Nothing was said yet." : last);
  }

  /** What leads out of a stop is pressed by a second card: the first shows what it would be. */
  private void yes() {
    boolean guarded = WholeGlass.is(current.get()) && !(current.get() instanceof Typable);
    if (walk.isSeen()) {
      if (walk.card()) {
        context.say(AGAIN);
      } else if (said.get().equals(AGAIN)) {
        // It is done: nobody is to scan YES for it once more.
        context.say("");
      }
    } else if (!walk.toTag()) {
      context.say("Scan NEXT until the ring is on the right key.");
    } else if (guarded) {
      context.say("Scan YES once more to press the tag. Or solve the stop.");
    } else {
      walk.press();
      walk.release();
    }
  }
}
