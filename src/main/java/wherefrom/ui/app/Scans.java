package wherefrom.ui.app;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Action;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;

/**
 * Hands what was read to the screen that is up: looked up once, and the window is drawn once when
 * it has been taken.
 */
final class Scans {
  private final ScreenContext context;
  private final Supplier<Screen> current;
  private final Runnable help;

  /**
   * @param help shows what to do now: its card does so on every screen
   */
  Scans(ScreenContext context, Supplier<Screen> current, Runnable help) {
    this.help = help;
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
    context.superseded();
    if (code.filter(Scans::isHelp).isPresent() && !(current.get() instanceof HelpScreen)) {
      help.run();
    } else if (current.get() instanceof Scannable screen) {
      hand(screen, TypedCode.lookUp(context, text, look));
    } else {
      context.say("A tag was scanned, but this screen takes none.");
    }
  }

  private static boolean isHelp(TagCode code) {
    return code.type() == TagType.ACTION_CARD
        && Action.find(code.item()).filter(Action.HELP::equals).isPresent();
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
