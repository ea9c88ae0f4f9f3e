package wherefrom.ui.app;

/** From one screen to the work on another, with what was scanned before that came up. */
public final class GoOn {
  private GoOn() {}

  /** Shows the screen and hands it the codes, in their order, as if they had been scanned there. */
  public static void to(ScreenContext context, ScreenId id, Scanned... scanned) {
    context.navigator().show(id);
    if (context.navigator().current() instanceof Scannable work) {
      work.begin();
      for (Scanned each : scanned) {
        work.scan(each);
      }
      context.navigator().changed();
    }
  }
}
