package wherefrom.ui.app;

import java.util.function.Supplier;
import wherefrom.parts.TagCode;

/** Hands what was read to the screen that is up. */
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
    hand(Scanned.of(context, code));
  }

  /** Anything else that was read. */
  void hand(String text) {
    hand(Scanned.of(context, text));
  }

  void hand(Scanned scanned) {
    context.superseded();
    if (scanned.isHelp() && !(current.get() instanceof HelpScreen)) {
      help.run();
    } else if (current.get() instanceof Scannable screen) {
      TypedCode.settle(context, scanned, screen::scan);
    } else {
      context.say("A tag was scanned, but this screen takes none.");
    }
  }

  /** The business of the screen that was up before this one. */
  void handBack(Scanned scanned) {
    context.navigator().back();
    hand(scanned);
  }
}
