package wherefrom.ui.app;

import java.util.Optional;
import java.util.function.IntConsumer;
import wherefrom.job.tags.CodeLookup;

/** The part whose tag was scanned, for screens that take nothing else. */
public final class ScannedPart {
  private ScannedPart() {}

  /** The part's item number; where the code is no part's tag, it is answered over the screen. */
  public static Optional<Integer> find(ScreenContext context, Scanned scanned, String wanted) {
    CodeLookup found = scanned.getFound();
    if (found instanceof CodeLookup.APart part) {
      return Optional.of(part.part().part().item());
    }
    context.refuse(found, wanted);
    return Optional.empty();
  }

  /** Opens the page of the part, whose tag was read. */
  public static void open(ScreenContext context, Scanned scanned) {
    find(context, scanned, "Scan the tag on a part: its page opens.")
        .ifPresent(item -> context.navigator().show(ScreenId.PART_IN_HAND, item));
  }

  /** Asks for the six digits of a tag instead of a scan. */
  public static void type(ScreenContext context, String wanted, IntConsumer done) {
    TypedCode.ask(context, typed -> find(context, typed, wanted).ifPresent(done::accept));
  }
}
