package wherefrom.ui.home;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.layout.Region;
import wherefrom.parts.Home;
import wherefrom.parts.Place;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.controls.Wire;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PlaceCounts;

/**
 * Where the pieces of a job's first screen stand: drawing, places, tag, days; the wire from the tag
 * to its place. The drawing takes what is left; with large text the places leave first.
 */
final class HomeView extends Region {
  private static final double ASIDE_MM = 63;
  private static final double WIRE_MM = 8;

  /** Of the gap above the tag: where the wire runs. */
  private static final double RUN = 0.6;

  private final Touch touch;
  private final double gap;
  private final EngineView engine;
  private final PlaceCounts counts;
  private final TouchKey turn;
  private final TagKey tag;
  private final DaysRow days;
  private final Wire wire;
  private Optional<Place> wired = Optional.empty();

  /** Whether the key that turns the drawing over leaves it its room. */
  private boolean turned = true;

  HomeView(
      Touch touch, EngineView engine, PlaceCounts counts, TouchKey turn, TagKey tag, DaysRow days) {
    this.touch = touch;
    this.gap = touch.scale().gap();
    this.engine = engine;
    this.counts = counts;
    this.turn = turn;
    this.tag = tag;
    this.days = days;
    this.wire = new Wire(touch.scale());
    getChildren().setAll(engine, counts, turn, tag, days, wire);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /**
   * The place that the wire leads to from the tag; none where it is nowhere in the engine. To a
   * main it would run over the main's name.
   */
  void lead(Optional<Place> place) {
    wired = place.filter(at -> !touch.isLarge() && at.kind().home() != Home.MAIN);
    requestLayout();
  }

  @Override
  protected double computeMinWidth(double height) {
    return Math.max(days.minWidth(-1), tag.minWidth(-1));
  }

  @Override
  protected double computeMinHeight(double width) {
    return tag.minHeight(width) + days.minHeight(width) + gap;
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double daysHigh = days.minHeight(width);
    Panes.place(days, 0, getHeight() - daysHigh, width, daysHigh);
    double bottom = getHeight() - daysHigh - gap;
    double tagHigh = Math.max(touch.scale().px(Scale.PRIMARY_MM), tag.minHeight(width));
    double above = wired.isPresent() ? touch.scale().px(WIRE_MM) : gap;
    turned = true;
    if (getHeight() > width) {
      double aside = asideBelow(width, bottom);
      turned = !touch.isLarge() || engine.hasNamedRoom(width, aside - tagHigh - above);
      bottom = turned ? aside : bottom;
    }
    Panes.place(tag, 0, bottom - tagHigh, width, tagHigh);
    double high = Math.max(0, bottom - tagHigh - above);
    if (getHeight() > width) {
      engine(width, high);
    } else {
      double aside = Math.max(touch.scale().px(ASIDE_MM), asideWidth());
      aside(width - aside, aside, high);
      engine(width - aside - gap, high);
    }
    wire();
  }

  private double asideWidth() {
    return touch.isLarge() ? turn.minWidth(-1) : Math.max(counts.minWidth(-1), turn.minWidth(-1));
  }

  /** The drawing's own key stands in for it where there is no room. */
  private void engine(double width, double high) {
    boolean room = high >= engine.minHeight(width);
    engine.setVisible(room);
    if (room) {
      Panes.place(engine, 0, 0, width, high);
      engine.layout();
    }
    turn.setVisible(turned && room && engine.isDrawn());
  }

  private void aside(double x, double width, double high) {
    double key = turn.minHeight(width);
    Panes.place(turn, x, high - key, width, key);
    double room = high - key - gap;
    counts.columns(1);
    counts.setVisible(!touch.isLarge());
    Panes.place(counts, x, 0, width, Math.max(0, room));
  }

  /** Places and key beside each other below the tag; where they begin. */
  private double asideBelow(double width, double bottom) {
    double half = Math.floor((width - gap) / 2);
    counts.columns(1);
    counts.setVisible(!touch.isLarge());
    double key = turn.minHeight(half);
    double high = touch.isLarge() ? key : Math.max(key, counts.minHeight(half));
    Panes.place(counts, 0, bottom - high, half, high);
    Panes.place(turn, half + gap, bottom - key, half, key);
    return bottom - high - gap;
  }

  /** From the eyelet round the tag's corner, along the gap above it, up to the place. */
  private void wire() {
    Optional<Point2D> end =
        wired.flatMap(engine::wireEnd).map(at -> at.add(engine.getLayoutX(), engine.getLayoutY()));
    engine.wired(end.isPresent());
    wire.setVisible(end.isPresent());
    end.ifPresent(at -> wire.point(way(at)));
  }

  private List<Point2D> way(Point2D end) {
    double x = tag.eyeletX();
    double top = tag.getLayoutY();
    double run = top - (1 - RUN) * touch.scale().px(WIRE_MM);
    double side = 0.35 * x;
    return List.of(
        new Point2D(x, top + tag.getHeight() / 2),
        new Point2D(side, top + tag.getHeight() / 4),
        new Point2D(side, run),
        new Point2D(end.getX(), run),
        end);
  }
}
