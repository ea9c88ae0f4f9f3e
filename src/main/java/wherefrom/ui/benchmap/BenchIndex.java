package wherefrom.ui.benchmap;

import java.util.Collection;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import wherefrom.drawing.PartState;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.text.Words;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.engine.EngineIndex;

/** The kind that the bench shows, on the engine: a tap does what a scan of the part would. */
final class BenchIndex implements EngineIndex {
  private final ScreenContext context;
  private final BenchMapModel model;
  private final PartKind kind;
  private final Consumer<Optional<Cue>> answered;

  /**
   * @param answered told what to sound after a tap or a scan
   */
  BenchIndex(ScreenContext context, BenchMapModel model, Consumer<Optional<Cue>> answered) {
    this.context = context;
    this.model = model;
    this.kind = model.kind();
    this.answered = answered;
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
    return model.states();
  }

  @Override
  public void open(Place place) {
    model.show(place.kind());
    context.perform(() -> answered.accept(model.tap(place.spot())));
  }

  @Override
  public void scan(Scanned scanned) {
    answered.accept(model.scan(scanned.getFound()));
  }
}
