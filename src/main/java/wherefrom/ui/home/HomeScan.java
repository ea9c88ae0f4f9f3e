package wherefrom.ui.home;

import wherefrom.job.tags.CodeLookup;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;

/** What a scan means where no work has begun: a part opens its page. */
public final class HomeScan {
  private HomeScan() {}

  /** Takes a code of the open job. */
  public static void take(ScreenContext context, Scanned scanned) {
    CodeLookup found = scanned.getFound();
    if (found instanceof CodeLookup.APart part) {
      context.navigator().show(ScreenId.PART, part.part().part().item());
    } else {
      context.refuse(found, "Scan the tag of a part. Or go on with the work first.");
    }
  }
}
