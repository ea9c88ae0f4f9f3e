package wherefrom.ui.drawn;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import wherefrom.drawing.Asked;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Point;
import wherefrom.drawing.Target;
import wherefrom.drawing.Zone;
import wherefrom.drawing.ZoneWords;
import wherefrom.engine.Layout;
import wherefrom.parts.Place;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/** What a finger hits on a drawing: its zones, each said aloud with what lies in it. */
final class DrawnZones {
  private final Touch touch;
  private final Layout layout;
  private final Asked asked;
  private final Consumer<Tap> tapped;
  private final IdentityHashMap<Zone, Region> regions = new IdentityHashMap<>();

  DrawnZones(Touch touch, Layout layout, Asked asked, Consumer<Tap> tapped) {
    this.touch = touch;
    this.layout = layout;
    this.asked = asked;
    this.tapped = tapped;
  }

  /** Those of a drawing that lead on. */
  List<Region> of(Drawing drawn, Predicate<Target> live) {
    regions.clear();
    List<Zone> shown = drawn.zones().stream().filter(it -> live.test(it.target())).toList();
    for (Zone zone : shown) {
      Region region = target(drawn, zone);
      region.setAccessibleRole(AccessibleRole.BUTTON);
      region.setManaged(false);
      regions.put(zone, region);
    }
    return shown.stream().map(regions::get).toList();
  }

  /** Puts them where they belong. */
  void lay() {
    regions.forEach((zone, region) -> lay(region, zone.bounds()));
  }

  /** A zone of which nothing is painted keeps all the room that the drawing has for it. */
  private static void lay(Region region, Bounds box) {
    if (region instanceof TouchKey) {
      // Whole pixels, no nearer to the next key and no lower than the drawing has it.
      Panes.place(
          region,
          Math.rint(box.x()),
          Math.rint(box.y()),
          Math.floor(box.width()),
          Math.ceil(box.height()));
    } else {
      region.resizeRelocate(box.x(), box.y(), box.width(), box.height());
    }
  }

  /** Says anew what is so in them. */
  void tell(Drawing drawn, Function<Place, PartState> states) {
    ZoneWords words = new ZoneWords(layout, drawn, asked, states);
    regions.forEach((zone, region) -> region.setAccessibleText(words.of(zone)));
  }

  /** The mains are keys below the drawing; all other zones lie on it and are not seen. */
  private Region target(Drawing drawn, Zone zone) {
    Runnable act = () -> tapped.accept(Tap.of(zone.target()));
    if (zone.target() instanceof Target.Main) {
      return touch.padKey(zone.name(), act);
    }
    if (zone.target() instanceof Target.Mains) {
      return touch.key("Mains", act);
    }
    Region region = touch.surface(new Region(), at -> tapped.accept(tap(drawn, zone, at)));
    region.getStyleClass().add(Touch.ZONE);
    return region;
  }

  /** What was tapped, and which part of it the finger came nearest to. */
  private Tap tap(Drawing drawn, Zone zone, Optional<Point2D> at) {
    Bounds box = zone.bounds();
    Optional<Place> nearest =
        at.map(point -> new Point(box.x() + point.getX(), box.y() + point.getY()))
            .flatMap(point -> drawn.findNearest(zone.target(), asked::isMeant, point));
    return new Tap(zone.target(), nearest);
  }
}
