package wherefrom.drawing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.PartKind;

/**
 * One cylinder, its parts large: a column for each of its valves in the order in which they stand,
 * and one for its bottom end.
 */
public final class CylinderZoom {
  private static final double HEADING = 62;
  private static final double BASELINE = 44;

  private final Layout layout;
  private final int cylinder;
  private final Asked asked;
  private final Glass glass;
  private final boolean named;
  private final List<Shape> ground = new ArrayList<>();
  private final List<Shape> words = new ArrayList<>();
  private final List<PartFigure> parts = new ArrayList<>();
  private final List<Anchor> anchors = new ArrayList<>();
  private final List<Zone> zones = new ArrayList<>();
  private final List<CarrierFigure> carriers = new ArrayList<>();

  private CylinderZoom(Layout layout, int cylinder, Asked asked, Glass glass, boolean named) {
    this.layout = layout;
    this.cylinder = cylinder;
    this.asked = asked;
    this.glass = glass;
    this.named = named;
  }

  /** All three columns, with names. */
  public static Drawing of(Layout layout, int cylinder, Bounds room, Asked asked, Glass glass) {
    return of(layout, cylinder, room, asked, glass, EnumSet.allOf(Column.class), true);
  }

  /**
   * Draws it.
   *
   * @param wanted the columns
   * @param named whether names stand beside the parts
   */
  public static Drawing of(
      Layout layout,
      int cylinder,
      Bounds room,
      Asked asked,
      Glass glass,
      Set<Column> wanted,
      boolean named) {
    CylinderZoom zoom = new CylinderZoom(layout, cylinder, asked, glass, named);
    zoom.columns(room, zoom.order().stream().filter(wanted::contains).toList());
    return new Drawing(
        room, glass, zoom.ground, zoom.parts, zoom.words, zoom.anchors, zoom.zones, zoom.carriers);
  }

  /** Whether a room is large enough for so many columns at the size that the person set. */
  public static boolean fits(Bounds room, int columns, Glass glass) {
    return ZoomColumn.fits(room, columns, glass);
  }

  private List<Column> order() {
    Bank bank = layout.findBank(cylinder).orElseThrow();
    char first = bank.valves().charAt(2 * bank.cylinders().indexOf(cylinder));
    return first == ValveSide.EXHAUST.letter()
        ? List.of(Column.EXHAUST, Column.INTAKE, Column.BOTTOM)
        : List.of(Column.INTAKE, Column.EXHAUST, Column.BOTTOM);
  }

  private void columns(Bounds room, List<Column> columns) {
    double share = room.width() * (columns.size() == 3 ? 0.03 : 0.045);
    double gap = Math.max(share, glass.gap());
    double wide = (room.width() - gap * (columns.size() - 1)) / columns.size();
    double growth = ZoomColumn.growth(wide, glass);
    double top = room.y() + glass.px(HEADING) * growth;
    for (int at = 0; at < columns.size(); at++) {
      Bounds box = new Bounds(room.x() + at * (wide + gap), room.y(), wide, room.height());
      ZoomColumn column = new ZoomColumn(box, top, asked, glass, named);
      draw(column, columns.get(at), glass.px(BASELINE) * growth);
    }
  }

  private void draw(ZoomColumn column, Column which, double baseline) {
    if (which == Column.BOTTOM) {
      column.heading(bottom(column.width()), 44, baseline);
      BottomColumn.draw(column, cylinder);
      zones.addAll(ZoomZones.bottom(column, cylinder));
    } else {
      ValveSide side = which == Column.EXHAUST ? ValveSide.EXHAUST : ValveSide.INTAKE;
      ValveSpot valve = new ValveSpot(cylinder, side);
      column.heading(valve.figures(), 58, baseline);
      rockerName(column, baseline);
      ValveColumn.draw(column, layout, valve);
      zones.addAll(ZoomZones.valve(column, valve));
    }
    ground.addAll(column.ground().shapes());
    words.addAll(column.words().shapes());
    parts.addAll(column.parts());
    anchors.addAll(column.anchors());
    carriers.addAll(column.carriers());
  }

  /** What the column of the bottom end is called. */
  private String bottom(double width) {
    String whole = cylinder + " bottom end";
    double least = Letters.width(whole, glass.letter() * glass.factor(), true);
    return least + glass.px(6) <= width ? whole : cylinder + " bottom";
  }

  /** The names of rocker and pivot stand above them, at the right of the heading. */
  private void rockerName(ZoomColumn column, double baseline) {
    double growth = ZoomColumn.growth(column.width(), glass);
    double size = Math.max(glass.letter() * glass.factor(), glass.px(34) * growth);
    double right = column.right() - glass.px(2);
    double room = column.width() - Letters.width("8 EX", size * 58 / 34, true) - glass.px(20);
    Optional<String> name =
        aboveRocker().filter(words -> Letters.width(words, size, false) <= room).findFirst();
    if (named && name.isPresent()) {
      double y = column.y(0) - glass.px(HEADING) * growth;
      ShapeCollector out = column.words();
      out.words(
          right,
          y + baseline - size * Letters.CAPITAL / 2,
          name.get(),
          size,
          Shape.Side.END,
          Role.NAME);
    }
  }

  /** What may be said there, the most first: the pivot's mark is left of the rocker's. */
  private Stream<String> aboveRocker() {
    boolean rocker = asked.isMeant(PartKind.ROCKER);
    boolean pivot = asked.isMeant(PartKind.PIVOT);
    if (rocker && pivot) {
      return Stream.of("pivot, rocker", "rocker");
    }
    return rocker ? Stream.of("rocker") : pivot ? Stream.of("pivot") : Stream.empty();
  }
}
