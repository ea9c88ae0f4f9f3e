package wherefrom.rules.before;

import java.util.List;
import wherefrom.inspection.Sources;
import wherefrom.rules.before.TestsBefore.Cylinder;

/** Too near to the limit to say, or the odd one out of its set. */
final class NearLowRule implements SignRule {
  @Override
  public List<Symptom> signs(TestsBefore tests) {
    LowCylinders low = new LowCylinders(tests);
    return tests.cylinders().stream()
        .filter(one -> !low.isLow(one))
        .filter(one -> low.isUndecided(one) || one.odd())
        .map(one -> sign(low, one))
        .toList();
  }

  private static Symptom sign(LowCylinders low, Cylinder one) {
    List<Integer> number = List.of(one.number());
    return low.isUndecided(one)
        ? Symptom.of("near-low", number, one.words())
            .readAgain("Too near the limit for this gauge. Read it again.")
            .from(Sources.TM_230)
        : Symptom.of("odd-low", number, one.words())
            .readAgain("The odd one of the set, to the low side. Do its leak-down.")
            .from(Sources.ODD_ONE);
  }
}
