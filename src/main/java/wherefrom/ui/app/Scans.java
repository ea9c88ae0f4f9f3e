package wherefrom.ui.app;

import java.util.function.Supplier;
import wherefrom.parts.Action;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagType;

/** Hands what was read to the screen that is up. */
final class Scans {
  private final Desk desk;
  private final Supplier<Screen> current;
  private final Runnable help;

  /**
   * @param help shows what to do now: its card does so on every screen
   */
  Scans(Desk desk, Supplier<Screen> current, Runnable help) {
    this.help = help;
    this.desk = desk;
    this.current = current;
  }

  private static boolean isHelp(String text) {
    return TagCode.find(text)
        .filter(code -> code.type() == TagType.ACTION_CARD)
        .flatMap(code -> Action.find(code.item()))
        .filter(Action.HELP::equals)
        .isPresent();
  }

  private void hand(Scannable screen, String code) {
    desk.attempt(() -> screen.scan(code));
    desk.navigator().changed();
  }

  void hand(String text) {
    desk.superseded();
    if (isHelp(text) && !(current.get() instanceof HelpScreen)) {
      help.run();
      return;
    }
    if (current.get() instanceof Scannable screen) {
      TypedCode.settle(desk, text, code -> hand(screen, code));
    } else {
      desk.say("A tag was scanned, but this screen takes none.");
    }
  }
}
