package wherefrom.ui.drawn;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import wherefrom.drawing.Asked;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.BigPartRing;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.Column;
import wherefrom.drawing.CylinderZoom;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.EngineAbove;
import wherefrom.drawing.EngineBelow;
import wherefrom.drawing.EngineGeometry;
import wherefrom.drawing.Glass;
import wherefrom.drawing.KindPair;
import wherefrom.drawing.MainsPage;
import wherefrom.drawing.OneBearing;
import wherefrom.drawing.View;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.parts.BigPartName;
import wherefrom.parts.Home;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.controls.Scale;

/** The drawings that a screen can show, each made for the room that it gets. */
public final class Drawn {
  /** The width of a column of a cylinder, in its height, at most. */
  private static final double COLUMN = 0.72;

  private final Layout layout;
  private final Asked asked;
  private final Glass glass;

  public Drawn(Layout layout, Asked asked, Scale scale) {
    this.layout = layout;
    this.asked = asked;
    this.glass = Glass.screen(scale.pixelsPerMm(), scale.textFactor());
  }

  public Function<Bounds, Drawing> above() {
    return room ->
        EngineAbove.of(
            EngineGeometry.of(layout, View.ABOVE, room, glass, BelowPanRail.NONE), asked);
  }

  /** The same with IN and EX outside the heads, where there is room for them. */
  Function<Bounds, Drawing> lettered() {
    return room ->
        EngineAbove.of(
            EngineGeometry.lettered(layout, View.ABOVE, room, glass, BelowPanRail.NONE), asked);
  }

  public Function<Bounds, Drawing> below(BelowPanRail foot) {
    return room -> EngineBelow.of(EngineGeometry.of(layout, View.BELOW, room, glass, foot), asked);
  }

  /** The engine from a side with a ring round the place of a big part. */
  public Function<Bounds, Drawing> ringed(View side, BelowPanRail foot, BigPartName name) {
    return room -> {
      EngineGeometry at = EngineGeometry.of(layout, side, room, glass, foot);
      Drawing engine = side == View.ABOVE ? EngineAbove.of(at, asked) : EngineBelow.of(at, asked);
      return engine.with(BigPartRing.of(at, name));
    };
  }

  public Function<Bounds, Drawing> cylinder(int cylinder) {
    return room -> CylinderZoom.of(layout, cylinder, room, asked, glass);
  }

  /** Of a cylinder the columns where a kind is, all of them where none is chosen. */
  public Function<Bounds, Drawing> cylinder(int cylinder, Optional<PartKind> kind) {
    if (kind.isEmpty()) {
      return cylinder(cylinder);
    }
    boolean top = kind.get().home() == Home.VALVE;
    Set<Column> columns =
        top ? EnumSet.of(Column.EXHAUST, Column.INTAKE) : EnumSet.of(Column.BOTTOM);
    return room -> CylinderZoom.of(layout, cylinder, room, asked, glass, columns, true);
  }

  /** As many mains as find room side by side, from the given one on. */
  public Function<Bounds, Drawing> mains(int first) {
    return room -> {
      int fitting = MainsPage.fitting(room.width(), glass);
      int count = Math.min(fitting, layout.mains() - first + 1);
      return MainsPage.of(layout, first, count, room, asked, glass);
    };
  }

  /** Columns of a cylinder, without names and marks. */
  public Function<Bounds, Drawing> columns(int cylinder, Set<Column> columns) {
    return columns(cylinder, columns, Set.of());
  }

  /** The same with the marks of these places alone. */
  public Function<Bounds, Drawing> columns(int cylinder, Set<Column> columns, Set<Place> marked) {
    return room -> {
      Bounds slim = slim(room, columns.size() * COLUMN * room.height());
      Glass large = glass.grown();
      return unmarked(
          CylinderZoom.of(layout, cylinder, slim, asked, large, columns, false), marked);
    };
  }

  /** The middle of a room, no wider than this; a little lower for the letters above. */
  private Bounds slim(Bounds room, double most) {
    double width = Math.min(room.width(), most);
    double head = Math.min(glass.letter(), 0.06 * room.height());
    return new Bounds(room.middleX() - width / 2, room.y() + head, width, room.height() - head);
  }

  /** A bearing with the mark of one place alone, if any. */
  public Function<Bounds, Drawing> bearing(Spot spot, Set<Place> marked) {
    return room -> unmarked(OneBearing.of(layout, spot, room, asked, glass.grown()), marked);
  }

  /** Two parts side by side, the wrong one and the right one. */
  public Function<Bounds, Drawing> pair(KindPair.Side wrong, KindPair.Side right) {
    return room -> KindPair.of(layout, wrong, right, room, glass.grown());
  }

  private static Drawing unmarked(Drawing drawn, Set<Place> but) {
    return new Drawing(
        drawn.frame(),
        drawn.glass(),
        drawn.ground(),
        drawn.parts(),
        drawn.words(),
        drawn.anchors().stream().filter(anchor -> anchor.holds(but)).toList(),
        List.of(),
        drawn.carriers());
  }
}
