package wherefrom.scan.grease;

import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;

/** How much of each kind of damage a frame suffers, 0 none to 1 the worst grade. */
final class Damage {
  private final Map<Family, Double> severities = new EnumMap<>(Family.class);

  /** Grade 1 to {@link Family#GRADES}; a mix is three kinds at lower severity each. */
  static Damage of(Family family, int grade, SplittableRandom random) {
    Damage damage = new Damage();
    double severity = grade / (double) Family.GRADES;
    switch (family) {
      case MIXED -> damage.three(Family.MIXED.ordinal(), 0.1 + 0.45 * severity, random);
      case HEAVY -> damage.three(Family.HEAVY.ordinal(), 0.25 + 0.5 * severity, random);
      default -> damage.severities.put(family, severity);
    }
    return damage;
  }

  /** Three kinds out of so many first ones. */
  private void three(int of, double severity, SplittableRandom random) {
    while (severities.size() < 3) {
      Family one = Family.values()[random.nextInt(of)];
      if (one != Family.MIXED) {
        severities.put(one, severity);
      }
    }
  }

  static Damage none() {
    return new Damage();
  }

  boolean has(Family family) {
    return severities.containsKey(family);
  }

  double of(Family family) {
    return severities.getOrDefault(family, 0.0);
  }
}
