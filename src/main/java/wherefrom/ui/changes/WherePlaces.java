package wherefrom.ui.changes;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wherefrom.engine.Bank;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.Layout;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.engine.Site;
import wherefrom.engine.Spot;
import wherefrom.engine.Spots;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.rules.consequence.Reach;

/** What a change can be about, each with the place on the drawn engine that stands for it. */
final class WherePlaces {
  private final Map<Place, String> keys = new LinkedHashMap<>();

  private WherePlaces() {}

  /**
   * The places for a change of this reach.
   *
   * @return none where a change is about the whole engine, or about a kind at a spot
   */
  static WherePlaces of(Layout layout, Reach reach) {
    WherePlaces all = new WherePlaces();
    switch (reach) {
      case WHOLE, PLACE -> {}
      case BANK -> layout.banks().forEach(all::bank);
      case VALVE ->
          Spots.valves(layout)
              .forEach(spot -> all.keys.put(new Place(PartKind.ROCKER, spot), spot.key()));
      case CYLINDER -> layout.cylinders().forEach(all::bore);
      case ROD_OR_MAIN -> all.bearings(layout);
    }
    return all;
  }

  /** The places of a kind of part. */
  static WherePlaces of(Layout layout, PartKind kind) {
    WherePlaces all = new WherePlaces();
    Places.of(layout, EnumSet.of(kind)).forEach(place -> all.keys.put(place, place.spot().key()));
    return all;
  }

  /** Any cylinder stands for its bank. */
  private void bank(Bank bank) {
    bank.cylinders().forEach(number -> keys.put(bore(PartKind.PISTON, number), bank.name()));
  }

  private void bore(int cylinder) {
    keys.put(bore(PartKind.PISTON, cylinder), new BoreSpot(cylinder).key());
  }

  private static Place bore(PartKind kind, int cylinder) {
    return new Place(kind, new BoreSpot(cylinder));
  }

  private void bearings(Layout layout) {
    for (int cylinder : layout.cylinders()) {
      Place cap = new Place(PartKind.ROD_CAP, new RodSpot(cylinder, ShellHalf.LOWER));
      keys.put(cap, new Site.BigEnd(cylinder).key());
    }
    for (int main = 1; main <= layout.mains(); main++) {
      Place shell = new Place(PartKind.MAIN_SHELL, new MainSpot(main, ShellHalf.UPPER));
      keys.put(shell, new Site.Main(main).key());
    }
  }

  /**
   * The place that a part from this home lies in: its own spot, the bearing that it is half of, or
   * the cylinder that it belongs to. Empty where there is none, or more than one.
   */
  Optional<Place> around(Place home) {
    Optional<Place> same =
        keys.keySet().stream().filter(place -> place.spot().equals(home.spot())).findFirst();
    List<Place> wider =
        keys.keySet().stream().filter(place -> holds(place.spot(), home.spot())).toList();
    return same.isPresent() || wider.size() != 1 ? same : Optional.of(wider.get(0));
  }

  private static boolean holds(Spot wide, Spot spot) {
    boolean bearing = Site.around(wide).equals(Site.around(spot));
    boolean ofCylinder = spot instanceof BoreSpot || wide instanceof BoreSpot;
    boolean cylinder = wide instanceof BoreSpot || wide instanceof RodSpot;
    return bearing || (cylinder && ofCylinder && isOfOneCylinder(wide, spot));
  }

  private static boolean isOfOneCylinder(Spot one, Spot other) {
    Optional<Integer> cylinder = Site.around(one).findCylinder();
    return cylinder.isPresent() && cylinder.equals(Site.around(other).findCylinder());
  }

  /** Each place with the name that it has in a change. */
  Map<Place, String> keys() {
    return Map.copyOf(keys);
  }

  /** The kind that all of them are of; empty where they are of several. */
  Optional<PartKind> kind() {
    EnumSet<PartKind> kinds = EnumSet.noneOf(PartKind.class);
    keys.keySet().forEach(place -> kinds.add(place.kind()));
    return kinds.size() == 1 ? kinds.stream().findFirst() : Optional.empty();
  }
}
