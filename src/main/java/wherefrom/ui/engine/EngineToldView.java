package wherefrom.ui.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Sign;
import wherefrom.parts.Place;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PlaceCounts;

/**
 * The engine at full width and, where the drawing leaves or yields the room, below it or beside it
 * what its marks mean and how many bear each.
 */
final class EngineToldView extends Region {
  /** A word or two; more, or a figure, is said of one part and not of its mark. */
  private static final Pattern PLAIN = Pattern.compile("[a-z]+( [a-z]+){0,3}");

  private static final int MOST_COLUMNS = 4;

  private final EngineView engine;
  private final PlaceCounts whole;
  private final PlaceCounts marked;
  private final double gap;

  /** Where drawing and counts stand. */
  private record Arranged(PlaceCounts counts, int columns, Bounds drawn, Bounds words) {}

  EngineToldView(Touch touch, EngineView engine) {
    this.engine = engine;
    this.whole = new PlaceCounts(touch);
    this.marked = new PlaceCounts(touch);
    this.gap = touch.scale().gap();
    whole.setVisible(false);
    marked.setVisible(false);
    getChildren().setAll(engine, whole, marked);
    Panes.grow(this);
  }

  /**
   * Tells how these places stand.
   *
   * @param off heads and shafts that are off, where this side shows them
   */
  void tell(Collection<Place> places, Function<Place, PartState> states, List<PartState> off) {
    List<PlaceCounts.Count> all = new ArrayList<>(counts(places, states));
    off.stream()
        .distinct()
        .map(state -> off(state, Collections.frequency(off, state)))
        .forEach(all::add);
    whole.show(all);
    marked.show(all.stream().filter(count -> count.sign() != Sign.IN).toList());
    requestLayout();
  }

  private static PlaceCounts.Count off(PartState state, int times) {
    String what = state.words() + (times > 1 ? "s" : "");
    return new PlaceCounts.Count(state.sign(), times, what + ", " + meaning(state.sign()));
  }

  /** One line a mark, in the order of the marks; none where every part is in the engine. */
  static List<PlaceCounts.Count> counts(
      Collection<Place> places, Function<Place, PartState> states) {
    Map<Sign, List<PartState>> bySign = new EnumMap<>(Sign.class);
    places.stream()
        .map(states)
        .forEach(
            state -> bySign.computeIfAbsent(state.sign(), none -> new ArrayList<>()).add(state));
    List<PlaceCounts.Count> counts = new ArrayList<>();
    bySign.forEach(
        (sign, of) -> counts.add(new PlaceCounts.Count(sign, of.size(), words(sign, of))));
    return bySign.keySet().equals(Set.of(Sign.IN)) ? List.of() : counts;
  }

  /** Where they are, or what was said of all of them; else what the mark means. */
  private static String words(Sign sign, List<PartState> states) {
    List<String> said = states.stream().map(state -> state.words()).distinct().toList();
    boolean common = said.size() == 1 && PLAIN.matcher(said.get(0)).matches();
    return common ? said.get(0) : meaning(sign);
  }

  private static String meaning(Sign sign) {
    return switch (sign) {
      case IN -> "in the engine";
      case OUT -> "out";
      case WASHING -> "washing";
      case AT_SHOP -> "machine shop";
      case MISSING -> "lost";
      case FITTED -> "done";
      case OTHER -> "another part";
      case AGAINST -> "not cleared";
      case SUSPECT -> "suspect";
      case FAILED -> "failed";
      case OPEN -> "not decided";
      case WAITING -> "to do";
      case EMPTY -> "left empty";
      case NEW -> "new";
    };
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return engine.minWidth(height);
  }

  @Override
  protected double computeMinHeight(double width) {
    return engine.minHeight(width);
  }

  @Override
  protected double computePrefHeight(double width) {
    return engine.prefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    Optional<Arranged> found =
        all().stream()
            .flatMap(counts -> Stream.of(below(counts), beside(counts), instead(counts)))
            .flatMap(Optional::stream)
            .findFirst();
    for (PlaceCounts each : List.of(whole, marked)) {
      each.setVisible(found.filter(arranged -> arranged.counts() == each).isPresent());
    }
    found.ifPresentOrElse(this::arrange, () -> Panes.place(engine, 0, 0, width, height));
  }

  private void arrange(Arranged found) {
    found.counts().columns(found.columns());
    put(engine, found.drawn());
    put(found.counts(), found.words());
  }

  private static void put(Region region, Bounds box) {
    Panes.place(region, box.x(), box.y(), box.width(), box.height());
  }

  /** All the counts; else those alone whose marks are on the drawing. */
  private List<PlaceCounts> all() {
    return Stream.of(whole, marked).filter(counts -> counts.count() > 0).toList();
  }

  /** Under a drawing that leaves the height. */
  private Optional<Arranged> below(PlaceCounts counts) {
    double width = getWidth();
    int columns = columns(counts);
    double low = counts.heightOf(columns);
    double drawn = Math.ceil(engine.heightFor(width));
    double free = getHeight() - drawn - 2 * gap - low;
    if (counts.widthOf(1) > width || free < 0) {
      return Optional.empty();
    }
    double top = Math.floor(free / 3);
    Bounds words = new Bounds(0, top + drawn + 2 * gap, width, low);
    return Optional.of(new Arranged(counts, columns, new Bounds(0, top, width, drawn), words));
  }

  /** On the right of a drawing that is as large without that width. */
  private Optional<Arranged> beside(PlaceCounts counts) {
    double wide = Math.ceil(counts.widthOf(1));
    double high = counts.heightOf(1);
    double narrower = getWidth() - 2 * gap - wide;
    if (high > getHeight() || !engine.spares(getWidth(), getHeight(), narrower)) {
      return Optional.empty();
    }
    double top = Math.floor((getHeight() - high) / 2);
    Bounds words = new Bounds(getWidth() - wide, top, wide, high);
    return Optional.of(new Arranged(counts, 1, new Bounds(0, 0, narrower, getHeight()), words));
  }

  /** Under a drawing that is made a little lower for them. */
  private Optional<Arranged> instead(PlaceCounts counts) {
    int columns = columns(counts);
    double low = counts.heightOf(columns);
    double lower = getHeight() - gap - low;
    boolean yields = lower > 0 && engine.yields(getWidth(), getHeight(), lower);
    if (counts.widthOf(1) > getWidth() || !yields) {
      return Optional.empty();
    }
    Bounds words = new Bounds(0, lower + gap, getWidth(), low);
    return Optional.of(new Arranged(counts, columns, new Bounds(0, 0, getWidth(), lower), words));
  }

  /** As many beside each other as there are, where all of them have room so. */
  private int columns(PlaceCounts counts) {
    int columns = Math.max(1, Math.min(MOST_COLUMNS, counts.count()));
    while (columns > 1 && counts.widthOf(columns) > getWidth()) {
      columns--;
    }
    return columns;
  }
}
