package wherefrom.ui.home;

import wherefrom.job.tags.Found;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Action;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.ScreenId;

/** What a scan means where no work has begun: a part opens its page. */
public final class HomeScan {
  private HomeScan() {}

  /**
   * Takes a code of the open job.
   *
   * @param goOn what the tag on the screen does, for the cards that say so
   */
  public static void take(Desk desk, String text, Runnable goOn) {
    Found found = new TagBook(desk.state(), desk.shelf()).find(text);
    if (found instanceof Found.APart part) {
      desk.navigator().show(ScreenId.PART, part.part().part().item());
    } else if (found instanceof Found.AnAction card) {
      act(desk, card.action(), goOn);
    } else {
      desk.refuse(found, "Scan the tag of a part. Or go on with the work first.");
    }
  }

  private static void act(Desk desk, Action action, Runnable goOn) {
    switch (action) {
      case UNDO -> desk.takeBack();
      case NEXT, YES -> goOn.run();
      case HELP -> desk.say("Press the tag to go on. Or scan any part to see its page.");
      case SKIP, REPEAT -> desk.say("There is nothing to skip here. Press the tag to go on.");
    }
  }
}
