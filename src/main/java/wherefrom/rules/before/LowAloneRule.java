package wherefrom.rules.before;

import java.util.List;
import wherefrom.inspection.Sources;
import wherefrom.rules.before.TestsBefore.Cylinder;

/** A low cylinder: oil lifts it and it is the rings; else a valve or the gasket. */
final class LowAloneRule implements SignRule {
  @Override
  public List<Symptom> signs(TestsBefore tests) {
    LowCylinders low = new LowCylinders(tests);
    return low.alone().stream().map(one -> sign(tests, low, one)).toList();
  }

  private static Symptom sign(TestsBefore tests, LowCylinders low, Cylinder one) {
    if (one.rise().isEmpty()) {
      return start("low-without-oil", one)
          .readAgain("Read it again with a spoon of oil in it: wet.");
    }
    return switch (low.rises(one)) {
      case ACCEPT ->
          start("low-rings", one).pointsTo("Rings, bore or piston.", LookAt.rings(one.number()));
      case REJECT ->
          start("low-valves", one)
              .pointsTo(
                  "A valve, its lobe, the gasket, or a holed piston.",
                  Together.of(
                      LookAt.valves(one.number()), LookAt.gasket(tests.layout(), one.number())));
      case UNDECIDED ->
          start("low-unclear", one)
              .readAgain("Too little rise to say. Read both again, or do the leak-down.");
    };
  }

  private static Symptom start(String id, Cylinder one) {
    return Symptom.of(id, List.of(one.number()), one.words()).from(Sources.TM_230);
  }
}
