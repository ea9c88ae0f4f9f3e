package wherefrom.ui.engine;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.EngineStates;
import wherefrom.drawing.PartState;
import wherefrom.drawing.View;
import wherefrom.job.EngineJob;
import wherefrom.job.PlaceState;
import wherefrom.parts.Home;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.text.Words;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PartStates;

/** The engine as it stands: a tap on a part opens the part's page. */
public final class PartIndex implements EngineIndex {
  private final ScreenContext context;
  private final Optional<PartKind> kind;

  /**
   * @param kind the one that is meant, or all
   */
  public PartIndex(ScreenContext context, Optional<PartKind> kind) {
    this.context = context;
    this.kind = kind;
  }

  /** The pages of all parts. */
  public static EnginePages pages(ScreenContext context) {
    return new EnginePages(context, new PartIndex(context, Optional.empty()));
  }

  private EngineJob job() {
    return context.state();
  }

  @Override
  public String title() {
    return kind.map(one -> Words.capital(one.plural())).orElse("Engine");
  }

  @Override
  public String title(View side) {
    return kind.isPresent() ? title() : side == View.ABOVE ? "Top end" : "Bottom end";
  }

  @Override
  public String aside(View side) {
    List<Place> seen =
        places().stream()
            .filter(place -> kind.map(one -> one == place.kind()).orElse(true))
            .filter(place -> EngineView.sideOf(place.kind()) == side)
            .toList();
    long fitted = seen.stream().filter(place -> job().findFitted(place).isPresent()).count();
    EngineStates states = PartStates.of(job());
    // What went with its head is out of the engine too.
    long in =
        seen.stream()
            .filter(place -> job().state(place) == PlaceState.IN)
            .filter(place -> states.apply(place).look() != DrawnAs.OUT)
            .count();
    String stands =
        fitted == 0 && in > 0
            ? seen.size() - in + " of " + seen.size() + " out"
            : fitted + " of " + seen.size() + " fitted";
    return isByCylinder() ? context.touch().brief(stands + ". Tap a cylinder.", stands) : stands;
  }

  /** Whether cylinders are what a finger finds on the drawing, and no keys beside it. */
  private boolean isByCylinder() {
    return kind.filter(one -> one.home() == Home.MAIN || one.home() == Home.CAM_BEARING).isEmpty();
  }

  @Override
  public Optional<PartKind> kind() {
    return kind;
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
  public void open(Place place) {
    job()
        .findSeated(place)
        .or(() -> job().findOwner(place))
        .ifPresent(part -> context.navigator().show(ScreenId.PART, part.item()));
  }

  @Override
  public void scan(Scanned scanned) {
    ScannedPart.open(context, scanned);
  }
}
