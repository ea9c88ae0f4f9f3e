package wherefrom.ui.shop;

import java.util.Collection;
import java.util.Optional;
import java.util.function.Function;
import wherefrom.drawing.PartState;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.text.Words;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.drawn.PartStates;
import wherefrom.ui.engine.EngineIndex;

/** The parts of a kind on the engine: a tap does what a scan of the part would. */
final class TapIndex implements EngineIndex {
  private final ScreenContext context;
  private final Taking taking;
  private final PartKind kind;

  TapIndex(ScreenContext context, Taking taking, PartKind kind) {
    this.context = context;
    this.taking = taking;
    this.kind = kind;
  }

  @Override
  public String title() {
    return Words.capital(kind.plural());
  }

  @Override
  public Optional<PartKind> kind() {
    return Optional.of(kind);
  }

  @Override
  public Collection<Place> places() {
    return context.state().places();
  }

  @Override
  public Function<Place, PartState> states() {
    return PartStates.of(context.state());
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
