package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import wherefrom.drawing.PartState;
import wherefrom.drawing.View;
import wherefrom.parts.Place;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PartStates;
import wherefrom.ui.engine.EngineIndex;

/** The places that are still open, on the engine: each opens what can be done with it. */
final class ToFitIndex implements EngineIndex {
  private final ScreenContext context;
  private final MissingModel model;
  private final PlaceWays ways;

  ToFitIndex(ScreenContext context, MissingModel model) {
    this.context = context;
    this.model = model;
    this.ways = new PlaceWays(context, model);
  }

  @Override
  public String title() {
    return "To fit";
  }

  @Override
  public String aside(View side) {
    long open = places().stream().filter(place -> EngineView.sideOf(place.kind()) == side).count();
    return open + " to fit here";
  }

  @Override
  public Collection<Place> places() {
    List<Place> open = new ArrayList<>();
    model.sections().forEach(line -> open.addAll(line.open()));
    return open;
  }

  @Override
  public Function<Place, PartState> states() {
    return PartStates.of(context.state());
  }

  @Override
  public void open(Place place) {
    ways.choose(place);
  }

  @Override
  public void scan(Scanned scanned) {
    ScannedPart.open(context, scanned);
  }
}
