package wherefrom.rules.before;

import java.util.List;
import java.util.stream.Stream;
import wherefrom.engine.Layout;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Sources;
import wherefrom.rules.before.TestsBefore.Running;

/** Oil pressure below the person's own limit: the pump, or what it feeds. */
final class OilPressureRule implements SignRule {
  private static final List<String> COLD = List.of("oil-cold-idle", "oil-cold-speed");
  private static final List<String> HOT = List.of("oil-hot-idle", "oil-hot-speed");

  @Override
  public List<Symptom> signs(TestsBefore tests) {
    List<Running> cold = low(tests, COLD);
    List<Running> hot = low(tests, HOT);
    if (cold.isEmpty() && hot.isEmpty()) {
      return List.of();
    }
    String found =
        String.join(" ", Stream.concat(cold.stream(), hot.stream()).map(Running::words).toList());
    Symptom sign = Symptom.of("oil-low", List.of(), found).from(Sources.TM_272);
    boolean onlyHot = cold.isEmpty() && isGood(tests, COLD);
    return List.of(
        onlyHot
            ? sign.pointsTo("Good cold, low hot: worn bearings first.", bearings(tests.layout()))
            : sign.pointsTo(
                "Pump, relief valve or pickup; else the bearings.",
                Together.of(
                    LookAt.all(tests.layout(), Feature.OIL_PUMP), bearings(tests.layout()))));
  }

  private static List<Running> low(TestsBefore tests, List<String> plans) {
    return read(tests, plans)
        .filter(one -> one.limit() == Look.FAIL || one.limit() == Look.SUSPECT)
        .toList();
  }

  /** Held against a limit and above it; one that nothing was held against says nothing. */
  private static boolean isGood(TestsBefore tests, List<String> plans) {
    return read(tests, plans).anyMatch(one -> one.limit() == Look.PASS);
  }

  private static Stream<Running> read(TestsBefore tests, List<String> plans) {
    return plans.stream().filter(tests.running()::containsKey).map(tests.running()::get);
  }

  private static List<LookAt> bearings(Layout layout) {
    return Stream.of(Feature.MAIN_JOURNAL, Feature.ROD_JOURNAL, Feature.CAM_JOURNAL, Feature.OIL)
        .flatMap(feature -> LookAt.all(layout, feature).stream())
        .toList();
  }
}
