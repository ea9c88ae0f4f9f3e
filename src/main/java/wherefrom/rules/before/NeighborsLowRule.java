package wherefrom.rules.before;

import java.util.List;
import wherefrom.inspection.Sources;
import wherefrom.rules.before.TestsBefore.Cylinder;

/** Two low neighbors that oil does not lift: the gasket between them. */
final class NeighborsLowRule implements SignRule {
  @Override
  public List<Symptom> signs(TestsBefore tests) {
    return new LowCylinders(tests).pairs().stream().map(pair -> sign(tests, pair)).toList();
  }

  private static Symptom sign(TestsBefore tests, List<Cylinder> pair) {
    int one = pair.get(0).number();
    int other = pair.get(1).number();
    String wet =
        pair.stream().allMatch(each -> each.rise().isPresent())
            ? ""
            : " Read both wet to be surer.";
    return Symptom.of(
            "neighbors-low", List.of(one, other), pair.get(0).words() + " " + pair.get(1).words())
        .pointsTo(
            "Neighbors low together: the head gasket between " + one + " and " + other + "." + wet,
            Together.of(
                LookAt.gasket(tests.layout(), one),
                Together.of(LookAt.valves(one), LookAt.valves(other))))
        .from(Sources.TM_230);
  }
}
