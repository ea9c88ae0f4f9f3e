package wherefrom.inspection;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.engine.LifterType;
import wherefrom.parts.PartKind;

/** Every quick test there is, by what it is for. */
public final class Checks {
  private static final List<Check> ALL =
      Stream.of(
              RockerChecks.ROWS,
              ValveChecks.ROWS,
              BottomEndChecks.ROWS,
              CastingChecks.ROWS,
              CastingTests.ROWS,
              TeardownChecks.ROWS)
          .flatMap(List::stream)
          .toList();

  private Checks() {}

  public static List<Check> all() {
    return ALL;
  }

  /** The tests for a kind of part, in the order of doing them; never empty. */
  public static List<Check> of(PartKind kind) {
    return of(kind.key());
  }

  /** The tests for a lifter of this type: a roller has no foot, a flat lifter no wheel. */
  public static List<Check> ofLifter(LifterType type) {
    String other = type == LifterType.ROLLER ? "lifter-foot" : "lifter-wheel";
    return of(PartKind.LIFTER).stream().filter(check -> !check.key().equals(other)).toList();
  }

  public static List<Check> of(Feature feature) {
    return of(feature.key());
  }

  private static List<Check> of(String what) {
    return ALL.stream().filter(check -> check.of().equals(what)).toList();
  }

  public static Optional<Check> find(String key) {
    return ALL.stream().filter(check -> check.key().equals(key)).findFirst();
  }
}
