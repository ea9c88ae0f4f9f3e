package wherefrom.ui.app;

import java.util.Optional;
import java.util.function.IntConsumer;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.TagBook;

/** The part whose tag was scanned, for screens that take nothing else. */
public final class ScannedPart {
  private ScannedPart() {}

  /** The part's item number; where the code is no part's tag, it is answered over the screen. */
  public static Optional<Integer> find(ScreenContext context, String text, String wanted) {
    CodeLookup found = new TagBook(context.state(), context.shelf()).find(text);
    if (found instanceof CodeLookup.APart part) {
      return Optional.of(part.part().part().item());
    }
    context.refuse(found, wanted);
    return Optional.empty();
  }

  /** Asks for the six digits of a tag instead of a scan. */
  public static void type(ScreenContext context, String wanted, IntConsumer done) {
    TypedCode.ask(
        context,
        "The six digits on the tag.",
        typed -> context.attempt(() -> find(context, typed, wanted).ifPresent(done::accept)));
  }
}
