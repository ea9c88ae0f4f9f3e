package wherefrom.ui.puttogether;

import java.util.Collection;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import wherefrom.drawing.PartState;
import wherefrom.parts.Place;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.drawn.PartStates;
import wherefrom.ui.engine.EngineIndex;

/** The engine that goes together: a tap on a place stands for its card. */
final class FitIndex implements EngineIndex {
  private final ScreenContext context;
  private final PutTogetherModel model;
  private final Consumer<Place> tapped;
  private final Consumer<Scanned> scanned;

  /**
   * @param tapped told which place was tapped
   * @param scanned told of a code that was scanned on one of the pages
   */
  FitIndex(
      ScreenContext context,
      PutTogetherModel model,
      Consumer<Place> tapped,
      Consumer<Scanned> scanned) {
    this.context = context;
    this.model = model;
    this.tapped = tapped;
    this.scanned = scanned;
  }

  @Override
  public String title() {
    return "Which place?";
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
  public Set<Place> here() {
    return model.halves().flatMap(Halves::here).map(Set::of).orElseGet(Set::of);
  }

  @Override
  public void open(Place place) {
    tapped.accept(place);
  }

  @Override
  public void scan(Scanned code) {
    scanned.accept(code);
  }
}
