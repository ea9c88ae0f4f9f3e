package wherefrom.ui.app;

import java.util.function.Function;
import java.util.function.Supplier;
import wherefrom.job.tags.Found;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.TagCode;

/**
 * Hands what was read to the screen that is up: looked up once, and the window is drawn once when
 * it has been taken.
 */
final class Scans {
  private final Desk desk;
  private final Supplier<Screen> current;

  Scans(Desk desk, Supplier<Screen> current) {
    this.desk = desk;
    this.current = current;
  }

  /** A tag of ours, read whole. */
  void hand(TagCode code) {
    hand(code.digits(), book -> book.find(code));
  }

  /** Anything else that was read. */
  void hand(String text) {
    hand(text, book -> book.find(text));
  }

  private void hand(String text, Function<TagBook, Found> look) {
    desk.superseded();
    if (current.get() instanceof Scannable screen) {
      hand(screen, TypedCode.lookUp(desk, text, look));
    } else {
      desk.say("A tag was scanned, but this screen takes none.");
    }
  }

  private void hand(Scannable screen, Scanned scanned) {
    TypedCode.settle(
        desk,
        scanned,
        sure -> {
          desk.attempt(() -> screen.scan(sure));
          desk.navigator().changed();
        });
  }
}
