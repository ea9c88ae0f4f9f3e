package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Orientation;
import javafx.geometry.Point2D;
import javafx.scene.layout.Region;
import wherefrom.drawing.Foot;
import wherefrom.job.puttogether.PutTogether.Mode;
import wherefrom.job.puttogether.StillMissing;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.ui.controls.AnswerCard;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.controls.Wire;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.engine.EnginePages;

/**
 * Putting together while nothing is stopped: the half that is known and the one that is to come,
 * with the wire between them; the engine; the keys.
 */
final class WorkView extends Region {
  private static final double HALF_MM = 33.5;
  private static final double BETWEEN_MM = 19;
  private static final double SIDE_MM = 37;
  private static final double ANSWER = 0.55;

  /** What the keys do. */
  interface Keys {
    void choose(Mode mode);

    void typeCode();

    void missing();

    void skip();

    void print();

    void decide();
  }

  private final Touch touch;
  private final Keys keys;
  private final EnginePages pages;
  private final EngineView engine;
  private final Map<Mode, TouchKey> modes = new EnumMap<>(Mode.class);
  private final AnswerCard card;
  private final Wire wire;
  private final Tiles row;
  private final TouchKey missing;
  private Optional<HalfTag> part = Optional.empty();
  private Optional<HalfTag> place = Optional.empty();
  private Tiles side;

  WorkView(Touch touch, EnginePages pages, Keys keys) {
    this.touch = touch;
    this.keys = keys;
    this.pages = pages;
    engine = pages.view();
    engine.foot(Foot.NONE);
    card = new AnswerCard(touch);
    wire = new Wire(touch.scale());
    missing = touch.key("", keys::missing);
    row =
        Tiles.row(
            touch.scale(),
            mode(Mode.FOLLOW_THE_LIST, touch.brief("Follow list", "List")),
            mode(Mode.SCAN_BOTH, touch.brief("Scan both", "Both")),
            mode(Mode.WHERE_DOES_THIS_GO, touch.brief("Where to?", "Where")),
            touch.key(touch.brief("Type code", "Type"), keys::typeCode),
            missing);
    side = new Tiles(touch.scale(), 1, Scale.GAP_MM, List.of());
    Panes.grow(this);
  }

  private TouchKey mode(Mode mode, String title) {
    TouchKey key = touch.key(title, () -> keys.choose(mode));
    modes.put(mode, key);
    return key;
  }

  void show(PutTogetherModel model) {
    modes.forEach((mode, key) -> key.select(mode == model.mode()));
    missing.setWords(StillMissing.isNothing(model.state()) ? "Finish" : "Missing");
    Optional<Halves> halves = model.halves();
    part = halves.map(all -> new HalfTag(touch, all.part(), all.hasPart()));
    place = halves.map(all -> new HalfTag(touch, all.place(), all.hasPlace()));
    card.show(model.answer());
    look(model, halves);
    side = new Tiles(touch.scale(), 3, Scale.GAP_MM, side(model));
    fill(halves.isPresent());
  }

  private void look(PutTogetherModel model, Optional<Halves> halves) {
    Optional<Place> about = halves.flatMap(Halves::here);
    about.ifPresent(at -> engine.look(EngineView.sideOf(at.kind())));
    if (about.isEmpty() && halves.isEmpty()) {
      engine.look(EngineView.sideOf(model.kind()));
    }
    pages.show(engine);
  }

  private void fill(boolean plain) {
    List<Region> shown = new ArrayList<>(List.of(engine, side, row));
    if (plain) {
      part.ifPresent(shown::add);
      place.ifPresent(shown::add);
    } else {
      shown.add(card);
    }
    getChildren().setAll(shown);
    if (plain) {
      getChildren().add(wire);
    }
    shown.forEach(Region::applyCss);
    requestLayout();
  }

  private List<TouchKey> side(PutTogetherModel model) {
    List<TouchKey> made = new ArrayList<>();
    if (model.mode() == Mode.FOLLOW_THE_LIST) {
      made.add(touch.key("Skip", keys::skip));
    }
    if (model.decisionsWait()) {
      made.add(touch.key("Decide", keys::decide));
    }
    if (model.answer().cue().filter(Cue.ASK::equals).isPresent()) {
      made.add(touch.key(touch.brief("Print a tag again", "Print"), keys::print));
    }
    if (made.isEmpty() || !touch.isLarge()) {
      made.add(touch.key(touch.brief("Turn over", "Turn"), engine::turnOver));
    }
    return made;
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  private double gap() {
    return touch.scale().gap();
  }

  private boolean isUpright() {
    return getHeight() > getWidth();
  }

  private boolean isStacked(double width) {
    double half = (width - touch.scale().px(BETWEEN_MM)) / 2;
    double widest =
        Math.max(
            part.map(tag -> tag.minWidth(-1)).orElse(0.0),
            place.map(tag -> tag.minWidth(-1)).orElse(0.0));
    return widest > half;
  }

  @Override
  protected double computeMinHeight(double width) {
    return head(width, Double.MAX_VALUE) + row.minHeight(width) + 2 * gap();
  }

  /** The height of the halves, or of the answer in their place. */
  private double head(double width, double most) {
    if (part.isEmpty() || place.isEmpty()) {
      return Math.min(most, Math.max(touch.scale().px(HALF_MM), ANSWER * most));
    }
    double half = isStacked(width) ? width : (width - touch.scale().px(BETWEEN_MM)) / 2;
    double one = Math.max(part.get().minHeight(half), place.get().minHeight(half));
    return isStacked(width)
        ? 2 * one + gap()
        : Math.max(one, Math.min(touch.scale().px(HALF_MM), 0.4 * most));
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double rows = Math.ceil(row.minHeight(width));
    double room = getHeight() - rows - gap();
    put(row, 0, getHeight() - rows, width, rows);
    boolean wide = !isUpright() && !touch.isLarge();
    double beside = Math.floor(Math.max(touch.scale().px(SIDE_MM), side.minWidth(-1)));
    double keysHigh = Math.ceil(side.minHeight(wide ? beside : width));
    double most = wide ? room : room - keysHigh - gap();
    double head = Math.min(head(width, most), most);
    if (part.isPresent() && place.isPresent()) {
      putHead(width, head);
    } else {
      put(card, 0, 0, width, head);
    }
    double top = head + gap();
    if (wide) {
      put(side, width - beside, room - keysHigh, beside, keysHigh);
      put(engine, 0, top, width - beside - gap(), room - top);
      return;
    }
    put(side, 0, room - keysHigh, width, keysHigh);
    put(engine, 0, top, width, room - keysHigh - gap() - top);
  }

  private void putHead(double width, double high) {
    double between = touch.scale().px(BETWEEN_MM);
    double half = (width - between) / 2;
    HalfTag one = part.orElseThrow();
    HalfTag other = place.orElseThrow();
    if (isStacked(width)) {
      double each = (high - gap()) / 2;
      put(one, 0, 0, width, each);
      put(other, 0, each + gap(), width, each);
      wire.lead(List.of());
      return;
    }
    put(one, 0, 0, half, high);
    put(other, half + between, 0, half, high);
    wire.lead(curve(half, half + between, high / 2));
  }

  /** The wire sags between the two tags. */
  private static List<Point2D> curve(double from, double to, double y) {
    List<Point2D> points = new ArrayList<>();
    int steps = 24;
    for (int at = 0; at <= steps; at++) {
      double share = (double) at / steps;
      double sag = 0.22 * (to - from) * Math.sin(Math.PI * share);
      points.add(new Point2D(from + share * (to - from), y + sag));
    }
    return points;
  }

  private static void put(Region region, double x, double y, double width, double height) {
    region.resizeRelocate(
        Math.round(x), Math.round(y), Math.floor(width), Math.floor(Math.max(0, height)));
  }
}
