package wherefrom.ui.subject;

import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.TagBook;
import wherefrom.ui.app.ScreenContext;

/** The part that a scan means. */
public final class Tagged {
  private Tagged() {}

  /** The part; where it is none, that is answered over the screen. */
  public static Optional<Subject> find(ScreenContext context, String text) {
    CodeLookup found = new TagBook(context.state(), context.shelf()).find(text);
    if (found instanceof CodeLookup.APart part) {
      return Optional.of(Subject.ofPart(part.part().part().item()));
    }
    context.refuse(found, "Scan a part's tag. What carries no tag is in the list.");
    return Optional.empty();
  }
}
