package wherefrom.ui.part;

import java.util.Optional;
import wherefrom.parts.Part;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;

/** From a part's page to putting it back: as if its tag had been scanned there. */
final class PuttingBack {
  private PuttingBack() {}

  /**
   * @param card the place card that was scanned already
   */
  static void go(ScreenContext context, Part part, Optional<Scanned> card) {
    context.navigator().show(ScreenId.PUT_TOGETHER);
    if (context.navigator().current() instanceof Scannable work) {
      work.scan(Scanned.of(context, part.code(context.state().engine())));
      card.ifPresent(work::scan);
      context.navigator().changed();
    }
  }
}
