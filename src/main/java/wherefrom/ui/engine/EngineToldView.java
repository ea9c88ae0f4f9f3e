package wherefrom.ui.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Sign;
import wherefrom.parts.Place;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PlaceCounts;

/**
 * The engine at full width and, where the drawing leaves or yields the room, below it what its
 * marks mean and how many bear each.
 */
final class EngineToldView extends Region {
  /** A word or two; more, or a figure, is said of one part and not of its mark. */
  private static final Pattern PLAIN = Pattern.compile("[a-z]+( [a-z]+){0,3}");

  private static final int MOST_COLUMNS = 4;

  private final EngineView engine;
  private final PlaceCounts counts;
  private final double gap;
  private boolean told;

  EngineToldView(Touch touch, EngineView engine) {
    this.engine = engine;
    this.counts = new PlaceCounts(touch);
    this.gap = touch.scale().gap();
    counts.setVisible(false);
    getChildren().setAll(engine, counts);
    Panes.grow(this);
  }

  /** Tells how these places stand. */
  void tell(Collection<Place> places, Function<Place, PartState> states) {
    List<PlaceCounts.Count> all = counts(places, states);
    told = !all.isEmpty();
    counts.show(all);
    requestLayout();
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
    counts.columns(columns(width));
    double low = counts.minHeight(width);
    double drawn = Math.ceil(engine.heightFor(width));
    double lower = height - gap - low;
    boolean roomy = drawn + 2 * gap + low <= height;
    boolean fits = told && counts.widthOf(1) <= width;
    boolean room = fits && (roomy || lower > 0 && engine.yields(width, height, lower));
    counts.setVisible(room);
    if (!room) {
      engine.resizeRelocate(0, 0, width, height);
      return;
    }
    double top = roomy ? Math.floor((height - drawn - 2 * gap - low) / 3) : 0;
    double high = roomy ? drawn : lower;
    engine.resizeRelocate(0, top, width, high);
    counts.resizeRelocate(0, top + high + (roomy ? 2 * gap : gap), width, low);
  }

  /** As many beside each other as there are, where all of them have room so. */
  private int columns(double width) {
    int columns = Math.max(1, Math.min(MOST_COLUMNS, counts.count()));
    while (columns > 1 && counts.widthOf(columns) > width) {
      columns--;
    }
    return columns;
  }
}
