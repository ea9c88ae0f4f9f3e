package wherefrom.ui.part;

import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.parts.Part;
import wherefrom.ui.app.AsksForTag;
import wherefrom.ui.app.GoOn;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;

/**
 * From a part's page to putting it back: as if its tag had been scanned there, where the page was
 * opened by it. Where it was opened by a tap nobody knows yet which part is in the hand.
 *
 * @param inHand whether the tag of the part was read
 */
record PuttingBack(ScreenContext context, Part part, boolean inHand) {

  /**
   * @param card the place card that was scanned already
   */
  void go(Optional<Scanned> card) {
    if (!inHand) {
      ask(card);
      return;
    }
    Scanned tag = Scanned.of(context, part.code(context.state().engine()));
    Scanned[] scanned = Stream.concat(Stream.of(tag), card.stream()).toArray(Scanned[]::new);
    GoOn.to(context, ScreenId.PUT_TOGETHER, scanned);
  }

  private void ask(Optional<Scanned> card) {
    GoOn.to(context, ScreenId.PUT_TOGETHER);
    if (context.navigator().current() instanceof AsksForTag work) {
      work.askFor(part);
    }
    if (context.navigator().current() instanceof Scannable work) {
      card.ifPresent(work::scan);
    }
    context.navigator().changed();
  }
}
