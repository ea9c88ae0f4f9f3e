package wherefrom.ui.engine;

import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import wherefrom.drawing.PartState;
import wherefrom.parts.Place;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.drawn.PartStates;

/** The engine that is taken apart or put together: a tap on a place stands for its scan. */
public final class WorkIndex implements EngineIndex {
  private final ScreenContext context;
  private final Supplier<String> title;
  private final Supplier<Optional<Place>> here;
  private final Consumer<Place> tapped;
  private final Consumer<Scanned> scanned;

  /**
   * @param title what a tap does, asked anew for each page
   * @param here the place that the work is at
   * @param tapped told which place was tapped
   * @param scanned told of a code that was scanned on one of the pages
   */
  public WorkIndex(
      ScreenContext context,
      Supplier<String> title,
      Supplier<Optional<Place>> here,
      Consumer<Place> tapped,
      Consumer<Scanned> scanned) {
    this.context = context;
    this.title = title;
    this.here = here;
    this.tapped = tapped;
    this.scanned = scanned;
  }

  @Override
  public String title() {
    return title.get();
  }

  @Override
  public String aside() {
    return title();
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
    return here.get().map(Set::of).orElseGet(Set::of);
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
