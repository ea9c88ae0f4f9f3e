package wherefrom.ui.app;

import java.util.function.Supplier;

/** Hands what was read to the screen that is up. */
final class Scans {
  private final Desk desk;
  private final Supplier<Screen> current;

  Scans(Desk desk, Supplier<Screen> current) {
    this.desk = desk;
    this.current = current;
  }

  void hand(String text) {
    desk.superseded();
    if (current.get() instanceof Scannable screen) {
      desk.attempt(() -> screen.scan(text));
      desk.navigator().changed();
    } else {
      desk.say("A tag was scanned, but this screen takes none.");
    }
  }
}
