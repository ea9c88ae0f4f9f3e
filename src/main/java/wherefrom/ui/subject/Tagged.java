package wherefrom.ui.subject;

import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.job.tags.Found;
import wherefrom.job.tags.TagBook;
import wherefrom.ui.app.Desk;

/** The part that a scan means. */
public final class Tagged {
  private Tagged() {}

  /** The part; where it is none, that is answered over the screen. */
  public static Optional<Subject> find(Desk desk, String text) {
    Found found = new TagBook(desk.state(), desk.shelf()).find(text);
    if (found instanceof Found.APart part) {
      return Optional.of(Subject.ofPart(part.part().part().item()));
    }
    desk.refuse(found, "Scan a part's tag. What carries no tag is in the list.");
    return Optional.empty();
  }
}
