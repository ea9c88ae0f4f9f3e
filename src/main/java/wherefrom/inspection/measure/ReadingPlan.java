package wherefrom.inspection.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitChoice;

/**
 * Which readings are taken of something, and in which order.
 *
 * @param key the name in files; never changes
 * @param of the key of the kind of part, or of the feature, that it is for
 * @param how what to watch
 * @param least the least plausible reading, in base units: mm, newtons
 * @param most the most plausible reading, in base units
 * @param apart how far readings of one surface may differ, in mm, before it is asked back; 0 where
 *     they are of different things
 * @param source where the way of measuring comes from
 */
public record ReadingPlan(
    String key,
    String of,
    String title,
    List<Station> stations,
    Derivation shape,
    String how,
    double least,
    double most,
    double apart,
    String source) {

  public ReadingPlan {
    stations = List.copyOf(stations);
  }

  static ReadingPlan of(PartKind kind, String key, String title, Derivation shape) {
    return start(kind.key(), key, title, shape);
  }

  static ReadingPlan of(Feature feature, String key, String title, Derivation shape) {
    return start(feature.key(), key, title, shape);
  }

  private static ReadingPlan start(String of, String key, String title, Derivation shape) {
    return new ReadingPlan(key, of, title, List.of(), shape, "", 0, 0, 0, Sources.PRACTICE);
  }

  ReadingPlan at(String station, String words) {
    return at(Station.of(station, words));
  }

  ReadingPlan at(Station station) {
    List<Station> more = new ArrayList<>(stations);
    more.add(station);
    return new ReadingPlan(key, of, title, more, shape, how, least, most, apart, source);
  }

  /** Plausible readings, in mm or newtons. */
  ReadingPlan between(double low, double high) {
    return new ReadingPlan(key, of, title, stations, shape, how, low, high, apart, source);
  }

  /** Plausible readings, in a unit of its stations. */
  ReadingPlan between(Unit unit, double low, double high) {
    return between(
        Amount.of(low, unit).inBase().doubleValue(), Amount.of(high, unit).inBase().doubleValue());
  }

  /** Its stations read one surface, and differ by wear alone. */
  ReadingPlan alikeWithin(double millimetres) {
    return new ReadingPlan(key, of, title, stations, shape, how, least, most, millimetres, source);
  }

  ReadingPlan how(String words) {
    return new ReadingPlan(key, of, title, stations, shape, words, least, most, apart, source);
  }

  ReadingPlan source(String text) {
    return new ReadingPlan(key, of, title, stations, shape, how, least, most, apart, text);
  }

  public Optional<Station> findStation(String station) {
    return stations.stream().filter(one -> one.key().equals(station)).findFirst();
  }

  /** What its gauge shows first. */
  public UnitChoice units() {
    return stations.get(0).units();
  }

  /** What a limit of its results is in. */
  UnitChoice resultUnits() {
    return shape == Derivation.LEAK ? UnitChoice.PERCENT : units();
  }

  /** Whether what it reads is a size that a standard, or a wanted, size can be given for. */
  public boolean hasStandardSize() {
    return shape == Derivation.JOURNAL || shape == Derivation.BORE || shape == Derivation.SHIM;
  }
}
