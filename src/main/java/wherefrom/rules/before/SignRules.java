package wherefrom.rules.before;

import java.util.List;

/** Every rule, in the order in which their signs are shown. */
public final class SignRules {
  private static final List<SignRule> ALL =
      List.of(
          new NeighborsLowRule(),
          new LowAloneRule(),
          new AllLowRule(),
          new NearLowRule(),
          new LeakRule(),
          new HeardRule(),
          new OilPressureRule(),
          new NeedleRule());

  private SignRules() {}

  /** What the tests point to; empty where nothing stands out. */
  public static List<Symptom> signs(TestsBefore tests) {
    return ALL.stream().flatMap(rule -> rule.signs(tests).stream()).toList();
  }
}
