package wherefrom.ui.shop;

import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.engine.KindIndex;

/** The parts of a kind on the engine: a tap does what a scan of the part would. */
final class TapIndex extends KindIndex {
  private final Taking taking;

  TapIndex(ScreenContext context, Taking taking, PartKind kind) {
    super(context, kind);
    this.taking = taking;
  }

  @Override
  public void open(Place place) {
    taking.tap(place.kind(), place.spot());
    context.navigator().changed();
    context.say(taking.words());
  }

  @Override
  public void scan(Scanned scanned) {
    taking.scan(scanned);
    context.say(taking.words());
  }
}
