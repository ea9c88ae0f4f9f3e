package wherefrom.ui.app;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Action;
import wherefrom.parts.TagCode;

/**
 * Hands what was read to the screen that is up: looked up once, and the window is drawn once when
 * it has been taken.
 */
final class Scans {
  private final ScreenContext context;
  private final Supplier<Screen> current;
  private final ActionCards cards;

  /**
   * @param cards does what an action card says where the screen does not
   */
  Scans(ScreenContext context, Supplier<Screen> current, ActionCards cards) {
    this.cards = cards;
    this.context = context;
    this.current = current;
  }

  /** A tag of ours, read whole. */
  void hand(TagCode code) {
    hand(code.digits(), Optional.of(code), book -> book.find(code));
  }

  /** Anything else that was read. */
  void hand(String text) {
    hand(text, TagCode.find(text), book -> book.find(text));
  }

  private void hand(String text, Optional<TagCode> code, Function<TagBook, CodeLookup> look) {
    Optional<Action> card = code.flatMap(ActionCards::find);
    if (card.filter(cards::take).isPresent()) {
      return;
    }
    context.superseded();
    if (current.get() instanceof Scannable screen) {
      hand(screen, TypedCode.lookUp(context, text, look));
    } else {
      context.say("A tag was scanned, but this screen takes none.");
    }
  }

  private void hand(Scannable screen, Scanned scanned) {
    TypedCode.settle(
        context,
        scanned,
        sure -> {
          context.attempt(() -> screen.scan(sure));
          context.navigator().changed();
        });
  }
}
