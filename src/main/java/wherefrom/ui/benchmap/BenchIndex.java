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
  private final Consumer<Optional<Cue>> tapped;
  private final Consumer<Scanned> scanned;

  /**
   * @param tapped told what to sound after a tap
   * @param scanned takes what is scanned
   */
  BenchIndex(
      ScreenContext context,
      BenchMapModel model,
      Consumer<Optional<Cue>> tapped,
      Consumer<Scanned> scanned) {
    super(context, model.kind());
    this.model = model;
    this.tapped = tapped;
    this.scanned = scanned;
  }

  @Override
  public Function<Place, PartState> states() {
    return model.states();
  }

  @Override
  public void open(Place place) {
    model.show(place.kind());
    context.perform(() -> tapped.accept(model.tap(place.spot())));
  }

  @Override
  public void scan(Scanned code) {
    scanned.accept(code);
  }
}
