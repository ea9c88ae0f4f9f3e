package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.ValveSpot;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/**
 * The zones of a cylinder drawn large. Where one would be too small, its whole column is one zone,
 * which opens the list of its parts. What is not tracked has none.
 */
final class ZoomZones {
  private static final double LIFTER = 0.79;
  private static final double SEAT = 0.50;
  private static final double LEFT = 0.40;
  private static final double RIGHT = 0.45;
  private static final double SHELL = 0.212;

  private final ZoomColumn at;
  private final double half;
  private final List<Zone> zones = new ArrayList<>();
  private final List<Place> all = new ArrayList<>();

  private ZoomZones(ZoomColumn at) {
    this.at = at;
    this.half = at.glass().gap() / 2;
  }

  static List<Zone> valve(ZoomColumn at, ValveSpot valve) {
    ZoomZones zones = new ZoomZones(at);
    double left = at.left();
    double middle = at.x(LEFT);
    double rocker = at.rockerHeight() / at.height();
    double beside = Math.max(at.x(RIGHT), middle + at.glass().gap());
    zones.add(left, at.right(), 0, rocker, valve, PartKind.ROCKER, PartKind.PIVOT);
    zones.add(left, middle, rocker, LIFTER, valve, PartKind.PUSHROD);
    zones.add(left, middle, LIFTER, 1, valve, PartKind.LIFTER);
    zones.add(
        beside,
        at.right(),
        rocker,
        SEAT,
        valve,
        PartKind.SPRING,
        PartKind.RETAINER,
        PartKind.KEEPERS);
    zones.add(beside, at.right(), SEAT, 1, valve, PartKind.VALVE);
    return zones.orOne(valve.words());
  }

  static List<Zone> bottom(ZoomColumn at, int cylinder) {
    ZoomZones zones = new ZoomZones(at);
    RodSpot upper = new RodSpot(cylinder, ShellHalf.UPPER);
    RodSpot lower = new RodSpot(cylinder, ShellHalf.LOWER);
    double first = 1 - 3 * SHELL;
    zones.add(
        0,
        first,
        Stream.of(
            new Place(PartKind.PISTON, new BoreSpot(cylinder)), new Place(PartKind.ROD, upper)));
    zones.add(first, first + SHELL, Stream.of(new Place(PartKind.ROD_SHELL, upper)));
    zones.add(first + SHELL, first + 2 * SHELL, Stream.of(new Place(PartKind.ROD_SHELL, lower)));
    zones.add(first + 2 * SHELL, 1, Stream.of(new Place(PartKind.ROD_CAP, lower)));
    return zones.orOne("cylinder " + cylinder + ", bottom end");
  }

  private void add(double from, double to, Stream<Place> places) {
    add(at.left(), at.right(), from, to, places);
  }

  private void add(
      double left, double right, double from, double to, ValveSpot valve, PartKind... kinds) {
    add(left, right, from, to, Stream.of(kinds).map(kind -> new Place(kind, valve)));
  }

  private void add(double left, double right, double from, double to, Stream<Place> places) {
    List<Place> tracked = places.filter(place -> at.asked().isTracked(place.kind())).toList();
    if (tracked.isEmpty()) {
      return;
    }
    double top = at.y(from) + (from == 0 ? 0 : half);
    double bottom = at.y(to) - half;
    all.addAll(tracked);
    zones.add(
        new Zone(
            new Target.Parts(tracked),
            Bounds.between(left, top, right, bottom),
            tracked.size() == 1 ? tracked.get(0).words() : name(tracked)));
  }

  private static String name(List<Place> places) {
    List<String> kinds = places.stream().map(place -> place.kind().word()).toList();
    return places.get(0).words() + " and " + String.join(", ", kinds.subList(1, kinds.size()));
  }

  private List<Zone> orOne(String name) {
    boolean fits =
        zones.stream().allMatch(zone -> EngineZones.isLargeEnough(zone.bounds(), at.glass()));
    if (fits) {
      return zones;
    }
    Bounds box = Bounds.between(at.left(), at.y(0), at.right(), at.y(1));
    return List.of(new Zone(new Target.Parts(all), box, name));
  }
}
