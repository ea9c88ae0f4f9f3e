package wherefrom.ui.takeapart;

import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import wherefrom.drawing.PartState;
import wherefrom.job.EngineJob;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.drawn.PartStates;
import wherefrom.ui.engine.EngineIndex;

/** The engine that is taken apart: a tap on a part says that it is out. */
final class OutIndex implements EngineIndex {
  private final ScreenContext context;
  private final TakeApartModel model;
  private final Consumer<Place> tapped;
  private final Consumer<Scanned> scanned;

  /**
   * @param tapped told which place was tapped
   * @param scanned told of a code that was scanned on one of the pages
   */
  OutIndex(
      ScreenContext context,
      TakeApartModel model,
      Consumer<Place> tapped,
      Consumer<Scanned> scanned) {
    this.context = context;
    this.model = model;
    this.tapped = tapped;
    this.scanned = scanned;
  }

  private EngineJob job() {
    return context.state();
  }

  @Override
  public String title() {
    return "Which is out?";
  }

  @Override
  public Collection<Place> places() {
    return job().places();
  }

  @Override
  public Function<Place, PartState> states() {
    return PartStates.of(job());
  }

  @Override
  public Set<Place> here() {
    Optional<Part> next = model.next().map(record -> record.part());
    return next.map(part -> Set.of(part.home())).orElseGet(Set::of);
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
