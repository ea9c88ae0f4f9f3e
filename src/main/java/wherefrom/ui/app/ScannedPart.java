package wherefrom.ui.app;

import java.util.Optional;
import java.util.function.IntConsumer;
import wherefrom.job.tags.Found;
import wherefrom.job.tags.TagBook;

/** The part whose tag was scanned, for screens that take nothing else. */
public final class ScannedPart {
  private ScannedPart() {}

  /** The part's item number; where the code is no part's tag, it is answered over the screen. */
  public static Optional<Integer> find(Desk desk, String text, String wanted) {
    Found found = new TagBook(desk.state(), desk.shelf()).find(text);
    if (found instanceof Found.APart part) {
      return Optional.of(part.part().part().item());
    }
    desk.refuse(found, wanted);
    return Optional.empty();
  }

  /** Asks for the six digits of a tag instead of a scan. */
  public static void type(Desk desk, String wanted, IntConsumer done) {
    TypedCode.ask(
        desk,
        "The six digits on the tag.",
        typed -> desk.attempt(() -> find(desk, typed, wanted).ifPresent(done::accept)));
  }
}
