package wherefrom.rules.before;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.Layout;
import wherefrom.engine.Spots;
import wherefrom.engine.ValveSide;
import wherefrom.engine.ValveSpot;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/** A place to look at when it is open: one of a kind of part, or a feature. */
public sealed interface LookAt {

  /** {@code cylinder 3, exhaust, valve}. */
  String words();

  /** The name in tables: {@code valve@3EX}, {@code bore@B3}. */
  String key();

  /** Whether it is this one. */
  boolean is(Subject subject, Optional<Place> home);

  /** The part whose home is there. */
  record APart(Place place) implements LookAt {
    @Override
    public String words() {
      return place.words();
    }

    @Override
    public String key() {
      return place.key();
    }

    @Override
    public boolean is(Subject subject, Optional<Place> home) {
      return home.filter(place::equals).isPresent();
    }
  }

  /** What carries no tag. */
  record AFeature(Subject.AFeature at) implements LookAt {
    @Override
    public String words() {
      return at.words();
    }

    @Override
    public String key() {
      return at.key();
    }

    @Override
    public boolean is(Subject subject, Optional<Place> home) {
      return at.equals(subject);
    }
  }

  private static LookAt at(Feature feature, String where) {
    return new AFeature(new Subject.AFeature(feature, where));
  }

  /** Everywhere that the engine has it. */
  static List<LookAt> all(Layout layout, Feature feature) {
    return feature.where(layout).stream().map(where -> at(feature, where)).toList();
  }

  /** Bore, rings and piston of a cylinder. */
  static List<LookAt> rings(int cylinder) {
    BoreSpot bore = new BoreSpot(cylinder);
    return List.of(
        at(Feature.RINGS, bore.key()),
        at(Feature.BORE, bore.key()),
        new APart(new Place(PartKind.PISTON, bore)));
  }

  /** A valve and its seat. */
  static List<LookAt> valve(int cylinder, ValveSide side) {
    ValveSpot spot = new ValveSpot(cylinder, side);
    return List.of(new APart(new Place(PartKind.VALVE, spot)), at(Feature.VALVE_SEAT, spot.key()));
  }

  /** Both valves and seats of a cylinder, and the lobes that move them. */
  static List<LookAt> valves(int cylinder) {
    return Stream.of(ValveSide.values())
        .flatMap(
            side ->
                Stream.concat(
                    valve(cylinder, side).stream(),
                    Stream.of(at(Feature.LOBE, new ValveSpot(cylinder, side).key()))))
        .toList();
  }

  /** Head face and deck on the bank of a cylinder. */
  static List<LookAt> gasket(Layout layout, int cylinder) {
    return layout.findBank(cylinder).stream()
        .flatMap(bank -> Stream.of(at(Feature.HEAD, bank.name()), at(Feature.DECK, bank.name())))
        .toList();
  }

  /** Every valve or spring of the engine. */
  static List<LookAt> each(Layout layout, PartKind kind) {
    return Spots.valves(layout).stream()
        .<LookAt>map(spot -> new APart(new Place(kind, spot)))
        .toList();
  }
}
