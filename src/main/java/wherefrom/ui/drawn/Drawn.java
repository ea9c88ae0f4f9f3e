package wherefrom.ui.drawn;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import wherefrom.drawing.Asked;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.Column;
import wherefrom.drawing.CylinderZoom;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.EngineAbove;
import wherefrom.drawing.EngineBelow;
import wherefrom.drawing.EngineGeometry;
import wherefrom.drawing.Foot;
import wherefrom.drawing.Glass;
import wherefrom.drawing.MainsPage;
import wherefrom.drawing.OneBearing;
import wherefrom.drawing.View;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.parts.Home;
import wherefrom.parts.PartKind;
import wherefrom.ui.controls.Scale;

/** The drawings that a screen can show, each made for the room that it gets. */
public final class Drawn {
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
        EngineAbove.of(EngineGeometry.of(layout, View.ABOVE, room, glass, Foot.NONE), asked);
  }

  public Function<Bounds, Drawing> below(Foot foot) {
    return room -> EngineBelow.of(EngineGeometry.of(layout, View.BELOW, room, glass, foot), asked);
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

  public Function<Bounds, Drawing> bearing(Spot spot) {
    return room -> OneBearing.of(layout, spot, room, asked, glass);
  }
}
