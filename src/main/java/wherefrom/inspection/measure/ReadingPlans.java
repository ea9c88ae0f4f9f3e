package wherefrom.inspection.measure;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wherefrom.engine.Layout;
import wherefrom.engine.RockerMount;
import wherefrom.inspection.Subject;
import wherefrom.parts.PartKind;

/** Every plan of readings. */
public final class ReadingPlans {
  private static final List<ReadingPlan> ALL =
      Stream.of(
              ValvetrainPlans.ROWS,
              BottomEndPlans.ROWS,
              ClearancePlans.ROWS,
              AssemblyPlans.ROWS,
              WeightPlans.ROWS,
              TeardownPlans.ROWS)
          .flatMap(List::stream)
          .toList();

  private ReadingPlans() {}

  public static List<ReadingPlan> all() {
    return ALL;
  }

  public static List<ReadingPlan> of(PartKind kind) {
    return ALL.stream().filter(plan -> plan.of().equals(kind.key())).toList();
  }

  public static Optional<ReadingPlan> find(String key) {
    return ALL.stream().filter(plan -> plan.key().equals(key)).findFirst();
  }

  /** Whether an engine has what a plan reads: without a shaft no rocker has a bore for one. */
  public static boolean existsIn(Layout layout, ReadingPlan plan) {
    return !plan.key().equals("rocker-bore") || layout.rockers() == RockerMount.SHAFT;
  }

  /** Whether a plan can be used on a subject; {@code kind} is the part's, for a part. */
  public static boolean suits(ReadingPlan plan, Subject subject, Optional<PartKind> kind) {
    String of =
        subject instanceof Subject.AFeature at
            ? at.feature().key()
            : kind.map(PartKind::key).orElse("");
    return plan.of().equals(of);
  }
}
