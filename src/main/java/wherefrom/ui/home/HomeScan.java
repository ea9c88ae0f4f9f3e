package wherefrom.ui.home;

import wherefrom.job.tags.CodeLookup;
import wherefrom.parts.Action;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;

/** What a scan means where no work has begun: a part opens its page. */
public final class HomeScan {
  private HomeScan() {}

  /**
   * Takes a code of the open job.
   *
   * @param goOn what the tag on the screen does, for the cards that say so
   */
  public static void take(ScreenContext context, Scanned scanned, Runnable goOn) {
    CodeLookup found = scanned.getFound();
    if (found instanceof CodeLookup.APart part) {
      context.navigator().show(ScreenId.PART, part.part().part().item());
    } else if (found instanceof CodeLookup.AnAction card) {
      act(context, card.action(), goOn);
    } else {
      context.refuse(found, "Scan the tag of a part. Or go on with the work first.");
    }
  }

  private static void act(ScreenContext context, Action action, Runnable goOn) {
    switch (action) {
      case UNDO -> context.takeBack();
      case NEXT, YES -> goOn.run();
      case HELP -> context.say("Press the tag to go on. Or scan any part to see its page.");
      case SKIP, REPEAT -> context.say("There is nothing to skip here. Press the tag to go on.");
    }
  }
}
