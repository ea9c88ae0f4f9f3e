package wherefrom.rules.consequence;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.engine.RockerMount;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;

/**
 * The engine that a change is made on.
 *
 * @param places the places that are tracked
 * @param lifters the type that it has at the time, which a change of cam may have made another than
 *     the layout's
 * @param every every place that the engine has, tracked or not
 */
public record Setting(
    Layout layout, Collection<Place> places, LifterType lifters, List<Place> every) {
  public Setting {
    places = List.copyOf(places);
    every = List.copyOf(every);
  }

  /** The engine as it came in. */
  public Setting(Layout layout, Collection<Place> places) {
    this(layout, places, layout.lifters(), Places.of(layout, PartKind.all()));
  }

  /** The engine once a change is made. */
  public Setting after(Change change) {
    return switch (change.kind()) {
      case FLAT_TO_ROLLER, NEW_ROLLER_CAM -> with(LifterType.ROLLER);
      case ROLLER_TO_FLAT, NEW_FLAT_CAM -> with(LifterType.FLAT);
      default -> this;
    };
  }

  private Setting with(LifterType now) {
    return new Setting(layout, places, now, every);
  }

  boolean isFlat() {
    return lifters == LifterType.FLAT;
  }

  boolean isRoller() {
    return !isFlat();
  }

  boolean isV() {
    return layout.arrangement() == Arrangement.V;
  }

  boolean isSeveralBanks() {
    return layout.banks().size() > 1;
  }

  /** Whether each rocker stands on a stud or pivot of its own. */
  boolean isStudded() {
    return layout.rockers() == RockerMount.INDIVIDUAL;
  }

  /** The tracked places of these kinds that the change covers in this way. */
  List<Place> listPlaces(Set<PartKind> kinds, PlaceScope cover, Change change) {
    return in(places, kinds, cover, change).toList();
  }

  /** Whether the engine has a place of these kinds that the change covers, tracked or not. */
  boolean hasAny(Set<PartKind> kinds, PlaceScope cover, Change change) {
    return in(every, kinds, cover, change).findAny().isPresent();
  }

  /** Every place of these kinds that the change covers, tracked or not. */
  List<Place> listAll(Set<PartKind> kinds, PlaceScope cover, Change change) {
    return in(every, kinds, cover, change).toList();
  }

  private Stream<Place> in(
      Collection<Place> all, Set<PartKind> kinds, PlaceScope cover, Change change) {
    Predicate<Place> covered = cover.of(change, layout);
    return all.stream().filter(place -> kinds.contains(place.kind()) && covered.test(place));
  }
}
