package wherefrom.workings.catalogue.accept;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a reading's standard uncertainty is made of: u² = Σ uᵢ² (JCGM 100:2008, 5.1). All components
 * are in one unit of the caller's choice.
 */
public record UncertaintyBudget(List<Component> components) {

  /** One part, as a standard uncertainty; the key tells which parts two readings share. */
  public record Component(String key, double standardUncertainty) {}

  public UncertaintyBudget {
    components = List.copyOf(components);
  }

  public static UncertaintyBudget empty() {
    return new UncertaintyBudget(List.of());
  }

  /** Adds a part known as a standard uncertainty. */
  public UncertaintyBudget with(String key, double standardUncertainty) {
    List<Component> more = new ArrayList<>(components);
    more.add(new Component(key, standardUncertainty));
    return new UncertaintyBudget(more);
  }

  /** Adds a part known by its limits, each value within them equally likely (4.3.7). */
  public UncertaintyBudget withLimits(String key, double halfWidth) {
    return with(key, halfWidth / Math.sqrt(3));
  }

  /** Adds the growth of a length at up to so many degrees off, per degree and length. */
  public UncertaintyBudget withTemperature(
      String key, double length, double expansionPerDegree, double degreesOff) {
    return withLimits(key, length * expansionPerDegree * degreesOff);
  }

  /** The combined standard uncertainty. */
  public double combined() {
    return Math.sqrt(
        components.stream()
            .mapToDouble(c -> c.standardUncertainty() * c.standardUncertainty())
            .sum());
  }

  public UncertaintyBudget without(Set<String> keys) {
    return new UncertaintyBudget(
        components.stream().filter(component -> !keys.contains(component.key())).toList());
  }

  /**
   * The budget of a difference of two readings. The parts that one tool brings equally into both
   * cancel.
   */
  public UncertaintyBudget minus(UncertaintyBudget other, Set<String> shared) {
    return new UncertaintyBudget(
        Stream.concat(
                without(shared).components.stream(), other.without(shared).components.stream())
            .toList());
  }
}
