package wherefrom.ui.app;

import java.util.function.Predicate;
import java.util.function.Supplier;
import wherefrom.parts.Action;
import wherefrom.parts.TagCode;

/** Hands what was read to the screen that is up. */
final class Scans {
  private final ScreenContext context;
  private final Supplier<Screen> current;
  private final Predicate<Action> cards;

  /**
   * @param cards does what an action card says, and says whether it did: the screen may want it
   */
  Scans(ScreenContext context, Supplier<Screen> current, Predicate<Action> cards) {
    this.cards = cards;
    this.context = context;
    this.current = current;
  }

  /** A tag of ours, read whole. */
  void hand(TagCode code) {
    hand(Scanned.of(context, code));
  }

  /** Anything else that was read. */
  void hand(String text) {
    hand(Scanned.of(context, text));
  }

  void hand(Scanned scanned) {
    context.guard(() -> take(scanned));
  }

  private void take(Scanned scanned) {
    if (scanned.card().filter(cards).isPresent()) {
      return;
    }
    context.superseded();
    if (current.get() instanceof Scannable screen && screen.takesNumbers() && scanned.isTyped()) {
      context.perform(() -> screen.scan(scanned));
    } else if (current.get() instanceof Scannable screen) {
      TypedCode.settle(context, scanned, screen::scan);
    } else {
      context.say("This screen takes no tag. Home, Bench, Apart and Together do.");
    }
  }

  /** The business of the screen that was up before this one. */
  void handBack(Scanned scanned) {
    context.navigator().back();
    hand(scanned);
  }
}
