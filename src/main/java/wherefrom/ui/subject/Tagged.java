package wherefrom.ui.subject;

import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.ScreenContext;

/** The part that a scan means. */
public final class Tagged {
  private Tagged() {}

  /** The part; where it is none, that is answered over the screen. */
  public static Optional<Subject> find(ScreenContext context, Scanned scanned) {
    return ScannedPart.find(
            context, scanned, "Scan a part's tag. What carries no tag is in the list.")
        .map(Subject::ofPart);
  }
}
