package wherefrom.inspection.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.Layout;
import wherefrom.engine.Spots;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;

/**
 * Two surfaces that run in each other, and which of their readings face each other: the clearance
 * is the one around less the one inside.
 *
 * @param key the name in files; a limit of its clearance is kept under it
 * @param tight whether it may be pressed together, so that the clearance is negative
 * @param how what to watch
 * @param source where the way of working it out comes from
 */
public record ClearancePair(
    String key,
    String title,
    Side around,
    Side inside,
    List<Facing> facings,
    boolean tight,
    String how,
    String source) {

  /** The result that a limit bounds. */
  public static final String CLEARANCE = "clearance";

  /**
   * One of both surfaces.
   *
   * @param of the key of the kind of part, or of the feature
   * @param plan the plan that measures it
   */
  public record Side(String of, String plan) {

    public Optional<PartKind> kind() {
      return PartKind.find(of);
    }

    public Optional<Feature> feature() {
      return Feature.find(of);
    }

    /** {@code piston}, {@code cylinder bore}. */
    public String word() {
      return kind().map(PartKind::word).or(() -> feature().map(Feature::word)).orElseThrow();
    }
  }

  /**
   * Readings that face each other.
   *
   * @param key the name in tables
   * @param around the stations of the surface around
   * @param inside the stations of the surface inside
   */
  public record Facing(String key, String words, List<String> around, List<String> inside) {
    public Facing {
      around = List.copyOf(around);
      inside = List.copyOf(inside);
    }
  }

  public ClearancePair {
    facings = List.copyOf(facings);
  }

  static ClearancePair of(String key, String title, Side around, Side inside) {
    return new ClearancePair(key, title, around, inside, List.of(), false, "", Sources.PRACTICE);
  }

  static Side part(PartKind kind, String plan) {
    return new Side(kind.key(), plan);
  }

  static Side feature(Feature feature, String plan) {
    return new Side(feature.key(), plan);
  }

  ClearancePair facing(String facing, String words, String around, String inside) {
    List<Facing> more = new ArrayList<>(facings);
    more.add(new Facing(facing, words, List.of(around.split(" ")), List.of(inside.split(" "))));
    return new ClearancePair(key, title, this.around, this.inside, more, tight, how, source);
  }

  ClearancePair pressed() {
    return new ClearancePair(key, title, around, inside, facings, true, how, source);
  }

  ClearancePair how(String words) {
    return new ClearancePair(key, title, around, inside, facings, tight, words, source);
  }

  ClearancePair source(String text) {
    return new ClearancePair(key, title, around, inside, facings, tight, how, text);
  }

  /** Where the engine has one: {@code 3EX}, {@code B3}, {@code C2}; none where it has no such. */
  public List<String> where(Layout layout) {
    return around
        .feature()
        .or(inside::feature)
        .map(feature -> feature.where(layout))
        .orElseGet(() -> Spots.bores(layout).stream().map(BoreSpot::key).toList());
  }

  /** Whether a part of this kind is one of the two. */
  public boolean isOf(PartKind kind) {
    return around.of().equals(kind.key()) || inside.of().equals(kind.key());
  }

  /** Whether both are parts, and this kind is the one around. */
  public boolean isOfPartsAround(PartKind kind) {
    return around.of().equals(kind.key()) && inside.kind().isPresent();
  }

  /** Whether this feature is one of the two. */
  public boolean isOf(Feature feature) {
    return around.of().equals(feature.key()) || inside.of().equals(feature.key());
  }

  /** Whether one of the two is measured by this plan. */
  public boolean isBy(ReadingPlan plan) {
    return around.plan().equals(plan.key()) || inside.plan().equals(plan.key());
  }
}
