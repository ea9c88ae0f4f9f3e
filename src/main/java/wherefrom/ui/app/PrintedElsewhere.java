package wherefrom.ui.app;

import java.util.List;
import java.util.function.Supplier;
import wherefrom.job.shelf.Shelf;
import wherefrom.parts.TagCode;

/** Every tag that the other jobs of the shelf printed: asked for where nothing else reads one. */
public final class PrintedElsewhere {
  private PrintedElsewhere() {}

  /** Taken as things are now; may be asked on any thread. */
  public static Supplier<List<TagCode>> of(ScreenContext context) {
    Shelf shelf = context.shelf();
    int engine = context.job().map(open -> open.state().engine()).orElse(-1);
    return () -> shelf.listPrinted(engine);
  }
}
