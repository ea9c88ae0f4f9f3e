package wherefrom.ui.part;

import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.parts.Part;
import wherefrom.ui.app.GoOn;
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
    Scanned tag = Scanned.of(context, part.code(context.state().engine()));
    Scanned[] scanned = Stream.concat(Stream.of(tag), card.stream()).toArray(Scanned[]::new);
    GoOn.to(context, ScreenId.PUT_TOGETHER, scanned);
  }
}
