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

  private void hand(Scannable screen, String code) {
    desk.attempt(() -> screen.scan(code));
    desk.navigator().changed();
  }

  void hand(String text) {
    desk.superseded();
    if (current.get() instanceof Scannable screen) {
      TypedCode.settle(desk, text, code -> hand(screen, code));
    } else {
      desk.say("A tag was scanned, but this screen takes none.");
    }
  }
}
