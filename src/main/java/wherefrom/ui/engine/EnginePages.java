package wherefrom.ui.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import wherefrom.drawing.Asked;
import wherefrom.drawing.PlaceWords;
import wherefrom.drawing.Target;
import wherefrom.drawing.View;
import wherefrom.engine.Layout;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.Tap;

/**
 * The engine as an index: from the drawing to a cylinder or the mains at full size, from there to a
 * place. Where a tap can mean one place only, that opens at once.
 *
 * <pre>
 *   EnginePages pages = new EnginePages(context, index);
 *   EngineView view = pages.view();      // of any size, for a screen of one's own
 *   pages.open(View.BELOW);              // or the page at full width
 * </pre>
 */
public final class EnginePages {
  private final ScreenContext context;
  private final EngineIndex index;

  public EnginePages(ScreenContext context, EngineIndex index) {
    this.context = context;
    this.index = index;
  }

  EngineIndex index() {
    return index;
  }

  Layout layout() {
    return context.state().layout();
  }

  /** The kinds that are drawn as tracked: the job's, and those that are meant. */
  Set<PartKind> kinds() {
    Set<PartKind> kinds = EnumSet.copyOf(context.state().kinds());
    index.kind().ifPresent(kinds::add);
    index.places().forEach(place -> kinds.add(place.kind()));
    return kinds;
  }

  Asked asked() {
    return new Asked(kinds(), index.kind());
  }

  /** The drawing for a screen of any size, its taps leading into this index. */
  public EngineView view() {
    EngineView[] made = new EngineView[1];
    made[0] =
        EngineView.keyed(context.touch(), layout(), kinds(), tap -> tapped(made[0].side(), tap));
    made[0].live(this::leadsOn);
    index.kind().ifPresent(made[0]::choose);
    return made[0];
  }

  /** Shows how the places stand now. */
  public void show(EngineView view) {
    view.show(index.states(), index.here());
  }

  /** Opens this side of the engine at full width. */
  public void open(View side) {
    context.navigator().open(() -> new EnginePageScreen(context, this, side));
  }

  /** Opens the side where the meant kind is; the top where all are. */
  public void open() {
    open(index.kind().map(EngineView::sideOf).orElse(View.ABOVE));
  }

  /** A small drawing was tapped. */
  void tapped(View side, Tap tap) {
    if (tap.target() instanceof Target.Whole) {
      open(side);
    } else {
      tapped(tap);
    }
  }

  /** Opens what was tapped on a page. */
  void tapped(Tap tap) {
    List<Place> places = places(tap.target());
    if (places.size() == 1) {
      index.open(places.get(0));
    } else if (index.isOfParts()) {
      page(tap).ifPresentOrElse(context.navigator()::open, () -> chooseAny(places));
    } else {
      chooseAny(places);
    }
  }

  /** What the finger came nearest to, so that it is found again; nothing where a place is meant. */
  private Set<Place> marked(Tap tap) {
    List<Place> places = places(tap.target());
    return index.here().isEmpty()
        ? tap.nearest().filter(places::contains).map(Set::of).orElseGet(Set::of)
        : Set.of();
  }

  private void chooseAny(List<Place> places) {
    if (!places.isEmpty()) {
      choose(places);
    }
  }

  /** The page of a part of the engine; empty for what has none. */
  private Optional<Supplier<Screen>> page(Tap tap) {
    return tap.target()
        .match(
            whole -> Optional.empty(),
            cylinder ->
                Optional.of(
                    () -> new CylinderPageScreen(context, this, cylinder.number(), marked(tap))),
            main -> Optional.of(() -> new MainsPageScreen(context, this, main.number())),
            mains -> Optional.of(() -> new MainsPageScreen(context, this, 1)),
            parts -> Optional.empty());
  }

  /** Asks which of several places is meant. */
  void choose(List<Place> places) {
    var states = index.states();
    List<Choice<Place>> choices =
        places.stream()
            .map(place -> new Choice<>(place, words(place), states.apply(place).words()))
            .toList();
    context.navigator().open(() -> new Listed<>(context, index, choices, index::open));
  }

  private String words(Place place) {
    return index.isOfParts() ? name(layout(), place) : Words.capital(place.spot().brief());
  }

  /** {@code 3 EX pushrod}, {@code rod 4, lower shell}. */
  public static String name(Layout layout, Place place) {
    return PlaceWords.named(layout, place);
  }

  /** The cylinders and the mains of a side as a list, where the glass is too small for zones. */
  void list(View side) {
    List<Target> targets = new ArrayList<>();
    layout().cylinders().forEach(number -> targets.add(new Target.Cylinder(number)));
    if (side == View.BELOW) {
      IntStream.rangeClosed(1, layout().mains())
          .forEach(number -> targets.add(new Target.Main(number)));
    }
    List<Choice<Target>> choices =
        targets.stream()
            .filter(this::leadsOn)
            .map(target -> new Choice<>(target, words(target), ""))
            .toList();
    context
        .navigator()
        .open(() -> new Listed<>(context, index, choices, target -> tapped(Tap.of(target))));
  }

  private static String words(Target target) {
    return target instanceof Target.Cylinder cylinder
        ? "Cylinder " + cylinder.number()
        : "Main " + ((Target.Main) target).number();
  }

  boolean leadsOn(Target target) {
    return target instanceof Target.Whole || !places(target).isEmpty();
  }

  /** The places of the index that a zone holds, in the order of taking apart. */
  List<Place> places(Target target) {
    return index.places().stream()
        .filter(place -> index.kind().filter(kind -> kind != place.kind()).isEmpty())
        .filter(place -> target.holds(place))
        .sorted(Comparator.comparing(Place::kind))
        .toList();
  }

  /** The places of cam bearings, which have no zones of their own. */
  List<Place> camBearings() {
    Collection<Place> all = index.places();
    return index.kind().filter(kind -> kind == PartKind.CAM_BEARING).stream()
        .flatMap(kind -> all.stream().filter(place -> place.kind() == kind))
        .toList();
  }
}
