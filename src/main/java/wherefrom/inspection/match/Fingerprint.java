package wherefrom.inspection.match;

import java.util.List;

/**
 * What was measured on a part: the same features in the same order for all of a group, such as
 * length, or wall at three spots.
 *
 * @param name the part's number, or the number chalked on an untagged one
 * @param values in one unit for each feature
 * @param uncertainties the standard uncertainty of each, more than 0
 */
public record Fingerprint(String name, List<Double> values, List<Double> uncertainties) {
  public Fingerprint {
    values = List.copyOf(values);
    uncertainties = List.copyOf(uncertainties);
    if (values.size() != uncertainties.size()
        || values.isEmpty()
        || uncertainties.stream().anyMatch(u -> u <= 0)) {
      throw new IllegalArgumentException(
          "a fingerprint needs values, each with an uncertainty above 0");
    }
  }

  public static Fingerprint of(String name, double value, double u) {
    return new Fingerprint(name, List.of(value), List.of(u));
  }
}
