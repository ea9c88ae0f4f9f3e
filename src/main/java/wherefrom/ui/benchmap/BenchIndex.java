package wherefrom.ui.benchmap;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import wherefrom.drawing.PartState;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.engine.KindIndex;

/** The kind that the bench shows, on the engine: a tap does what a scan of the part would. */
final class BenchIndex extends KindIndex {
  private final BenchMapModel model;
  private final Consumer<Optional<Cue>> answered;

  /**
   * @param answered told what to sound after a tap or a scan
   */
  BenchIndex(ScreenContext context, BenchMapModel model, Consumer<Optional<Cue>> answered) {
    super(context, model.kind());
    this.model = model;
    this.answered = answered;
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
