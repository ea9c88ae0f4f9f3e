package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import javafx.geometry.Orientation;
import javafx.scene.layout.Region;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.DrawnAs;
import wherefrom.engine.Layout;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.controls.Wire;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PartShape;
import wherefrom.ui.engine.EnginePages;

/**
 * Putting together while nothing is stopped: the half that is known and the one that is to come,
 * with the wire between them; the engine; the keys.
 */
final class WorkView extends Region {
  private static final double HALF_MM = 33.5;
  private static final double BETWEEN_MM = 19;
  private static final double SIDE_MM = 37;
  private static final double SHAPE_MM = 24;

  /** Higher than so much of its width, as beside the camera, it has its keys in rows. */
  private static final double NARROW = 0.8;

  /** Lower than this the halves, two rows of large keys and the engine have no room. */
  private static final double LOW_MM = 120;

  private final Touch touch;
  private final WorkKeys keys;
  private final EnginePages pages;
  private final EngineView engine;
  private final Wire wire;
  private List<TouchKey> rowKeys = List.of();
  private List<TouchKey> sideKeys = List.of();
  private Optional<Region> card = Optional.empty();
  private Optional<HalfTag> part = Optional.empty();
  private Optional<HalfTag> place = Optional.empty();
  private Optional<Region> shape = Optional.empty();
  private Tiles row;
  private Tiles side;
  private boolean upright;
  private boolean cramped;
  private Optional<PutTogetherModel> shown = Optional.empty();

  /** At this height and below, the keys that were shown last had no room beside the drawing. */
  private double tooLow;

  WorkView(Touch touch, EnginePages pages, WorkKeys keys, EngineView engine) {
    this.touch = touch;
    this.keys = keys;
    this.pages = pages;
    this.engine = engine;
    engine.foot(BelowPanRail.NONE);
    wire = new Wire(touch.scale());
    row = tiles(List.of(), 1);
    side = tiles(List.of(), 1);
    Panes.grow(this);
  }

  private Tiles tiles(List<TouchKey> made, int columns) {
    return new Tiles(touch.scale(), columns, Scale.GAP_MM, made);
  }

  void show(PutTogetherModel model) {
    Optional<Halves> halves = model.halves();
    part = halves.map(all -> new HalfTag(touch, all.part(), all.hasPart()));
    place = halves.map(all -> new HalfTag(touch, all.place(), all.hasPlace()));
    card = halves.isPresent() ? Optional.empty() : Optional.of(head(model));
    shown = Optional.of(model);
    label(model);
    tooLow = 0;
    look(model);
    fill();
  }

  /** What is told while nothing was scanned: the tag where decisions are to be made first. */
  private Region head(PutTogetherModel model) {
    return keys.head(model)
        .<Region>map(tag -> tag)
        .orElseGet(() -> new AnswerPanel(touch, model.answer()));
  }

  private void label(PutTogetherModel model) {
    rowKeys = keys.row(model);
    sideKeys = keys.side(model);
  }

  /** The ring and the way round stay, whatever else is told beside what waits. */
  private void look(PutTogetherModel model) {
    Optional<Place> about = model.here();
    engine.look(EngineView.sideOf(about.map(Place::kind).orElse(model.kind())));
    pages.show(engine);
    Optional<Place> held = model.dueHalves().held().map(Part::home);
    Layout layout = model.state().layout();
    double square = touch.scale().px(SHAPE_MM);
    shape = held.map(at -> new PartShape(touch.scale(), layout, at, square, DrawnAs.HERE));
  }

  /** Whether all keys stand in rows below the drawing. */
  private boolean isStacked() {
    return upright || touch.isLarge();
  }

  private void fill() {
    List<TouchKey> all = new ArrayList<>(rowKeys);
    if (isStacked()) {
      all.addAll(sideKeys);
    }
    row = tiles(all, upright ? 3 : Math.max(1, all.size()));
    side = tiles(isStacked() ? List.of() : sideKeys, 1);
    List<Region> shown = new ArrayList<>(List.of(engine, side, row));
    for (Optional<? extends Region> one : List.of(shape, part, place, card)) {
      one.ifPresent(shown::add);
    }
    getChildren().setAll(shown);
    if (part.isPresent()) {
      getChildren().add(wire);
    }
    shown.forEach(Region::applyCss);
    requestLayout();
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  private double gap() {
    return touch.scale().gap();
  }

  private double half(double width) {
    return Math.floor((width - touch.scale().px(BETWEEN_MM)) / 2);
  }

  /** Whether the halves stand one below the other: side by side they have no room, or need more. */
  private boolean isTall(double width) {
    double widest =
        Math.max(
            part.map(tag -> tag.minWidth(-1)).orElse(0.0),
            place.map(tag -> tag.minWidth(-1)).orElse(0.0));
    return widest > half(width) || leastHalves(width, true) < leastHalves(width, false);
  }

  @Override
  protected double computeMinHeight(double width) {
    return leastHead(width) + sideHigh() + row.minHeight(width) + gap();
  }

  private double leastHead(double width) {
    return card.map(one -> one.minHeight(width)).orElseGet(() -> leastHalves(width, isTall(width)));
  }

  /** What the halves need at least, one below the other or side by side. */
  private double leastHalves(double width, boolean tall) {
    double wide = tall ? width : half(width);
    double one = part.map(tag -> tag.minHeight(wide)).orElse(0.0);
    double both = Math.max(one, place.map(tag -> tag.minHeight(wide)).orElse(0.0));
    return tall ? 2 * both + gap() : both;
  }

  /** The height of the halves, or of the answer in their place: the keys below keep their room. */
  private double head(double width, double most) {
    return Math.max(leastHead(width), Math.min(likedHead(width, most), most - sideHigh()));
  }

  private double likedHead(double width, double most) {
    double wanted = card.map(one -> one.prefHeight(width)).orElse(touch.scale().px(HALF_MM));
    double usual = Math.max(leastHead(width), Math.min(wanted, 0.5 * most));
    double whole = Math.min(heads(width, HalfTag::prefHeight), most);
    boolean high = card.isEmpty() && getHeight() > getWidth();
    for (double liked :
        high ? List.of(whole, heads(width, HalfTag::highForTwo)) : List.<Double>of()) {
      if (liked > usual && engine.hasRoom(width, most - liked - gap())) {
        return liked;
      }
    }
    boolean drawn = card.isPresent() || engine.hasRoom(width, most - usual - gap());
    return drawn ? usual : Math.max(usual, whole);
  }

  /** What the halves need where each is so high for its width. */
  private double heads(double width, ToDoubleBiFunction<HalfTag, Double> high) {
    boolean tall = isTall(width);
    double wide = tall ? width : half(width);
    double one = part.map(tag -> high.applyAsDouble(tag, wide)).orElse(0.0);
    double most = Math.max(one, place.map(tag -> high.applyAsDouble(tag, wide)).orElse(0.0));
    return tall ? 2 * most + gap() : most;
  }

  @Override
  protected void layoutChildren() {
    stand(getWidth(), getHeight());
    double width = getWidth();
    double rows = Math.ceil(row.minHeight(width));
    Panes.place(row, 0, getHeight() - rows, width, rows);
    double room = getHeight() - rows - gap();
    double head = Math.min(room, head(width, room));
    if (card.isPresent()) {
      Panes.place(card.get(), 0, 0, width, head);
    } else {
      putHalves(width, head);
    }
    under(width, head + gap(), room);
  }

  /** All keys go in rows where the view is narrow, or too low for keys beside the drawing. */
  private void stand(double width, double height) {
    boolean isCramped = height < touch.scale().px(LOW_MM) || height > NARROW * width;
    if (isCramped != cramped) {
      cramped = isCramped;
      keys.cramped(cramped);
      shown.ifPresent(this::label);
      fill();
    }
    boolean stands = height > NARROW * width || height <= tooLow;
    if (stands == upright) {
      return;
    }
    upright = stands;
    fill();
    if (!upright && minHeight(width) > height) {
      tooLow = height;
      upright = true;
      fill();
    }
  }

  private boolean isBeside() {
    return !isStacked() && !sideKeys.isEmpty();
  }

  /** What the keys beside the drawing take of the height below the halves, with their gap. */
  private double sideHigh() {
    return isBeside() ? Math.ceil(side.minHeight(sideWide())) + gap() : 0;
  }

  private double sideWide() {
    return Math.floor(Math.max(touch.scale().px(SIDE_MM), side.minWidth(-1)));
  }

  private void under(double width, double top, double bottom) {
    boolean beside = isBeside();
    double large = isStacked() ? shape.map(one -> one.prefWidth(-1)).orElse(0.0) : 0;
    double wide = beside ? sideWide() : large;
    double keysHigh = beside ? Math.ceil(side.minHeight(wide)) : 0;
    Panes.place(side, width - wide, bottom - keysHigh, wide, keysHigh);
    putShape(width - wide, top, wide, bottom - top - sideHigh());
    double left = width - (wide > 0 ? wide + gap() : 0);
    double high = bottom - top;
    double least = Math.max(1, 0.65 * touch.scale().textFactor());
    engine.setVisible(high >= least * touch.scale().px(Scale.KEY_MM));
    Panes.place(engine, 0, top, left, high);
  }

  /** The part as it goes in, where it has room: above the keys, else beside the engine. */
  private void putShape(double x, double y, double wide, double high) {
    shape.ifPresent(
        large -> {
          double square = large.prefHeight(-1);
          large.setVisible(square <= wide && square <= high);
          Panes.place(large, x + (wide - square) / 2, y + (high - square) / 2, square, square);
        });
  }

  private void putHalves(double width, double high) {
    HalfTag one = part.orElseThrow();
    HalfTag other = place.orElseThrow();
    if (isTall(width)) {
      double each = (high - gap()) / 2;
      Panes.place(one, 0, 0, width, each);
      Panes.place(other, 0, each + gap(), width, each);
      wire.lead(List.of());
      return;
    }
    double half = half(width);
    Panes.place(one, 0, 0, half, high);
    Panes.place(other, width - half, 0, half, high);
    wire.sag(half, width - half, high / 2);
  }
}
