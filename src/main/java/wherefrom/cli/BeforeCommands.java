package wherefrom.cli;

import java.util.List;
import java.util.Map;
import wherefrom.job.Caution;
import wherefrom.job.before.BeforeTeardown;
import wherefrom.rules.before.LookAt;
import wherefrom.rules.before.Symptom;
import wherefrom.rules.before.TestsBefore;
import wherefrom.workings.ResultValue;

/** The tests of an engine that is still together: each cylinder in its set, what they point to. */
final class BeforeCommands {
  private BeforeCommands() {}

  static List<Command> all() {
    return List.of(
        Command.of("before list", "Lists each cylinder's compression and leak-down in its set.")
            .noting(
                "Readings: \"measure compression@B3 150psi --plan compression-dry\".",
                "Where it leaks: \"inspect compression@B3\". The running engine: running@.",
                Caution.CRANKING.sentence(),
                Caution.LEAK_AIR.sentence())
            .lists(
                (bench, call) ->
                    new BeforeTeardown(bench.job())
                        .tests().cylinders().stream().map(CylinderRow::new)),
        Command.of(
                "before signs", "Lists what the tests point to, and where to look when it is open.")
            .lists(
                (bench, call) ->
                    new BeforeTeardown(bench.job()).signs().stream().map(SignRow::new)));
  }

  private record CylinderRow(TestsBefore.Cylinder one) implements Row {
    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "cylinder", one.number(),
          "dry", one.dry().map(ResultValue::text).orElse(""),
          "share", one.share().map(ResultValue::text).orElse(""),
          "rise", one.rise().map(ResultValue::text).orElse(""),
          "leak", one.leak().map(ResultValue::text).orElse(""),
          "odd", one.odd());
    }

    @Override
    public String text() {
      return Answer.cells(
          "cylinder " + one.number(),
          one.dry().map(ResultValue::text).orElse("not read"),
          one.share().map(ResultValue::text).orElse("-"),
          one.rise().map(ResultValue::text).orElse("-"),
          one.leak().map(ResultValue::text).orElse("-"));
    }
  }

  private record SignRow(Symptom sign) implements Row {
    private List<String> places() {
      return sign.lookAt().stream().map(LookAt::key).toList();
    }

    @Override
    public Map<String, Object> fields() {
      return Json.object(
          "sign", sign.id(),
          "cylinders", sign.cylinders(),
          "found", sign.found(),
          "points-to", sign.pointsTo(),
          "look-at", places(),
          "open", sign.open(),
          "source", sign.source());
    }

    @Override
    public String text() {
      return Answer.cells(sign.id(), sign.sentence(), String.join(" ", places()), sign.source());
    }
  }
}
