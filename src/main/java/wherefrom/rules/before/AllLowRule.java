package wherefrom.rules.before;

import java.util.List;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Sources;
import wherefrom.rules.before.TestsBefore.Cylinder;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

/** Every cylinder below the person's own limit: what all share. */
final class AllLowRule implements SignRule {
  @Override
  public List<Symptom> signs(TestsBefore tests) {
    LowCylinders low = new LowCylinders(tests);
    if (!low.all()) {
      return List.of();
    }
    List<Cylinder> wet = tests.cylinders().stream().filter(one -> one.rise().isPresent()).toList();
    boolean lifted =
        !wet.isEmpty() && wet.stream().allMatch(one -> low.rises(one) == Ruling.ACCEPT);
    Symptom sign =
        Symptom.of("all-low", List.of(), "Every cylinder that was read is below your limit.")
            .from(Sources.PRACTICE);
    return List.of(
        lifted
            ? sign.pointsTo(
                "Oil lifts them all: worn rings and bores.",
                Together.of(
                    LookAt.all(tests.layout(), Feature.BORE),
                    LookAt.all(tests.layout(), Feature.RINGS)))
            : sign.pointsTo(
                "Throttle closed, weak battery, or late cam timing. Test again first.",
                Together.of(
                    LookAt.all(tests.layout(), Feature.TIMING),
                    LookAt.all(tests.layout(), Feature.CAMSHAFT))));
  }
}
