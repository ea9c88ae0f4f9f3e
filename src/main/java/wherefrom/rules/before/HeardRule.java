package wherefrom.rules.before;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import wherefrom.engine.ValveSide;
import wherefrom.inspection.Look;
import wherefrom.inspection.Sources;
import wherefrom.rules.before.TestsBefore.Cylinder;

/** Where the air comes out says what lets it through. */
final class HeardRule implements SignRule {

  /** An answer, and what it says. */
  private record Way(String key, String found, String pointsTo) {}

  private static final List<Way> WAYS =
      List.of(
          new Way("leak-intake", "air at the intake", "The intake valve, or its seat."),
          new Way("leak-exhaust", "air at the exhaust", "The exhaust valve, or its seat."),
          new Way("leak-crankcase", "air in the crankcase", "Rings, bore or piston."),
          new Way("leak-coolant", "bubbles in the coolant", "The head gasket, or a crack."),
          new Way("leak-neighbor", "air in the next cylinder", "The gasket between them."));

  static boolean isLeak(Look look) {
    return look == Look.SUSPECT || look == Look.FAIL;
  }

  @Override
  public List<Symptom> signs(TestsBefore tests) {
    List<Symptom> signs = new ArrayList<>();
    for (Cylinder one : tests.cylinders()) {
      for (Way way : WAYS) {
        Look heard = one.heard().getOrDefault(way.key(), Look.NOT_LOOKED);
        if (isLeak(heard)) {
          signs.add(sign(tests, one, way, heard));
        }
      }
    }
    return signs;
  }

  private static Symptom sign(TestsBefore tests, Cylinder one, Way way, Look heard) {
    String leak = one.leak().map(share -> ", leaks " + TestsBefore.whole(share)).orElse("");
    String faint = heard == Look.SUSPECT ? " (a little)" : "";
    return Symptom.of(
            way.key(),
            List.of(one.number()),
            "Cylinder " + one.number() + ": " + way.found() + faint + leak + ".")
        .pointsTo(way.pointsTo(), lookAt(tests, one.number()).getOrDefault(way.key(), List.of()))
        .from(Sources.TM_230);
  }

  private static Map<String, List<LookAt>> lookAt(TestsBefore tests, int cylinder) {
    List<LookAt> gasket = LookAt.gasket(tests.layout(), cylinder);
    return Map.of(
        "leak-intake", LookAt.valve(cylinder, ValveSide.INTAKE),
        "leak-exhaust", LookAt.valve(cylinder, ValveSide.EXHAUST),
        "leak-crankcase", LookAt.rings(cylinder),
        "leak-coolant", gasket,
        "leak-neighbor", gasket);
  }
}
