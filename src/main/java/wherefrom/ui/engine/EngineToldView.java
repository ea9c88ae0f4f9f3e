package wherefrom.ui.engine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
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
 * The engine at full width and, where the glass is high enough, below it what its marks mean and
 * how many bear each.
 */
final class EngineToldView extends Region {
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

  /** What all of them have in common; where they differ what the mark means. */
  private static String words(Sign sign, List<PartState> states) {
    List<String> said = states.stream().map(EngineToldView::brief).distinct().toList();
    return said.size() == 1 ? said.get(0) : meaning(sign);
  }

  /** What a mark adds is said last: {@code suspect} of {@code out, suspect}. */
  private static String brief(PartState state) {
    String[] sentences = state.words().split("\\. ", 2);
    String[] parts = sentences[0].split(", ");
    return parts[parts.length - 1];
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
      case FAILED -> "fail";
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
    counts.columns(2);
    if (counts.minWidth(-1) > width) {
      counts.columns(1);
    }
    double low = counts.minHeight(width);
    double drawn = Math.ceil(engine.heightFor(width));
    boolean room = told && counts.minWidth(-1) <= width && drawn + 2 * gap + low <= height;
    counts.setVisible(room);
    if (!room) {
      engine.resizeRelocate(0, 0, width, height);
      return;
    }
    double top = Math.floor((height - drawn - 2 * gap - low) / 3);
    engine.resizeRelocate(0, top, width, drawn);
    counts.resizeRelocate(0, top + drawn + 2 * gap, width, low);
  }
}
