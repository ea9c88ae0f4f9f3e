package wherefrom.rules.before;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import wherefrom.engine.Layout;
import wherefrom.inspection.Checks;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Look;
import wherefrom.inspection.Sources;
import wherefrom.parts.PartKind;
import wherefrom.rules.before.TestsBefore.Running;

/** What the needle of a vacuum gauge does, and how high it stands. */
final class NeedleRule implements SignRule {
  private static final String VACUUM = "vacuum-idle";

  /** What it does, what that points to, where to look. */
  private record Way(
      String key, String pointsTo, Function<Layout, List<LookAt>> lookAt, String source) {}

  private static final List<Way> WAYS =
      List.of(
          new Way(
              "needle-low",
              "Common to all: late ignition or valve timing, or an intake leak.",
              layout -> LookAt.all(layout, Feature.TIMING),
              Sources.TM_677),
          new Way(
              "needle-beat",
              "One cylinder each time: a burned valve, or its plug.",
              layout -> LookAt.each(layout, PartKind.VALVE),
              Sources.PRACTICE),
          new Way(
              "needle-now-and-then",
              "A valve that sticks, or a plug that misses.",
              layout -> LookAt.each(layout, PartKind.VALVE),
              Sources.PRACTICE),
          new Way(
              "needle-wider",
              "Weak or broken valve springs.",
              layout -> LookAt.each(layout, PartKind.SPRING),
              Sources.TM_677),
          new Way("needle-narrower", "A leak at the intake.", layout -> List.of(), Sources.TM_677),
          new Way(
              "needle-steadies", "Ignition or carburetor.", layout -> List.of(), Sources.TM_677),
          new Way(
              "needle-no-sweep",
              "Rings that do not seal, where no gasket leaks.",
              layout -> LookAt.all(layout, Feature.RINGS),
              Sources.TM_677));

  @Override
  public List<Symptom> signs(TestsBefore tests) {
    List<Symptom> signs = new ArrayList<>();
    Stream.ofNullable(tests.running().get(VACUUM))
        .filter(one -> one.limit() == Look.FAIL || one.limit() == Look.SUSPECT)
        .map(one -> low(tests, one))
        .forEach(signs::add);
    for (Way way : WAYS) {
      if (HeardRule.isLeak(tests.needle().getOrDefault(way.key(), Look.NOT_LOOKED))) {
        signs.add(sign(tests, way));
      }
    }
    return signs;
  }

  private static Symptom low(TestsBefore tests, Running vacuum) {
    return Symptom.of("vacuum-low", List.of(), vacuum.words())
        .pointsTo(
            "Rings, valve or ignition timing, or a leak. See what the needle does.",
            LookAt.all(tests.layout(), Feature.TIMING))
        .from(Sources.TM_677);
  }

  private static String small(String sentence) {
    return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
  }

  private static Symptom sign(TestsBefore tests, Way way) {
    String does = Checks.find(way.key()).orElseThrow().title().replace('?', '.');
    return Symptom.of(way.key(), List.of(), "The needle: " + small(does))
        .pointsTo(way.pointsTo(), way.lookAt().apply(tests.layout()))
        .from(way.source());
  }
}
