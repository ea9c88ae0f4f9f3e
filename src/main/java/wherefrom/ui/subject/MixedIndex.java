package wherefrom.ui.subject;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Sign;
import wherefrom.drawing.View;
import wherefrom.inspection.Subject;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PartStates;
import wherefrom.ui.engine.EngineIndex;

/** Parts and places of several kinds on the drawn engine; what is not drawn has keys below it. */
public final class MixedIndex implements EngineIndex {
  private final ScreenContext context;
  private final String title;
  private final Supplier<List<Subject>> all;
  private final Function<Subject, PartState> state;
  private final Consumer<Subject> opened;

  /**
   * @param all asked anew each time that a page comes up
   * @param state how each stands
   * @param opened told of the one that was tapped
   */
  public MixedIndex(
      ScreenContext context,
      String title,
      Supplier<List<Subject>> all,
      Function<Subject, PartState> state,
      Consumer<Subject> opened) {
    this.context = context;
    this.title = title;
    this.all = all;
    this.state = state;
    this.opened = opened;
  }

  private Map<Place, List<Subject>> placed() {
    Map<Place, List<Subject>> placed = new LinkedHashMap<>();
    for (Subject subject : all.get()) {
      drawn(subject)
          .ifPresent(at -> placed.computeIfAbsent(at, none -> new ArrayList<>()).add(subject));
    }
    return placed;
  }

  /** Where it is drawn; cam bearings are drawn only where they are all that is asked about. */
  private Optional<Place> drawn(Subject subject) {
    return SubjectIndex.place(context.state(), subject)
        .filter(place -> place.kind() != PartKind.CAM_BEARING);
  }

  /** The side that shows the most of them. */
  public View side() {
    long above = places().stream().filter(MixedIndex::isAbove).count();
    return 2 * above >= places().size() ? View.ABOVE : View.BELOW;
  }

  private static boolean isAbove(Place place) {
    return EngineView.sideOf(place.kind()) == View.ABOVE;
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public String aside(View side) {
    long here =
        placed().entrySet().stream()
            .filter(at -> EngineView.sideOf(at.getKey().kind()) == side)
            .mapToLong(at -> at.getValue().size())
            .sum();
    String of = here + " of " + all.get().size();
    return context.touch().brief(of + " on this side", of + " here");
  }

  @Override
  public Collection<Place> places() {
    return placed().keySet();
  }

  @Override
  public Function<Place, PartState> states() {
    Map<Place, PartState> known = new LinkedHashMap<>();
    placed().forEach((place, here) -> known.put(place, worst(here)));
    return PartStates.asTheyAre(context.state(), place -> known.getOrDefault(place, PartState.IN));
  }

  private PartState worst(List<Subject> here) {
    return here.stream()
        .map(state)
        .max(Comparator.comparing(MixedIndex::badness))
        .orElse(PartState.IN);
  }

  private static int badness(PartState at) {
    return at.sign() == Sign.FAILED ? 2 : at.sign() == Sign.SUSPECT ? 1 : 0;
  }

  /** Banks, what there is one of, and what turns inside the block. */
  @Override
  public List<KeyRow.Act> besides() {
    return all.get().stream()
        .filter(subject -> drawn(subject).isEmpty())
        .map(
            subject ->
                new KeyRow.Act(
                    Named.title(context.state(), subject) + ": " + state.apply(subject).words(),
                    () -> opened.accept(subject)))
        .toList();
  }

  @Override
  public void open(Place place) {
    List<Subject> here = placed().getOrDefault(place, List.of());
    SubjectPick.open(context, title, here, one -> state.apply(one).words(), opened);
  }

  @Override
  public void scan(Scanned scanned) {
    Tagged.find(context, scanned).ifPresent(opened);
  }
}
