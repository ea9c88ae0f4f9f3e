package wherefrom.inspection.measure;

import java.util.List;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Sources;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitChoice;

/** What is read on an engine that is still together. */
final class TeardownPlans {
  private static final UnitChoice PRESSURE = UnitChoice.of(Dimension.STRESS);

  static final List<ReadingPlan> ROWS =
      List.of(
          ReadingPlan.of(
                  Feature.COMPRESSION, "compression-dry", "Compression, dry", Derivation.VALUE)
              .at(Station.in(PRESSURE, "highest", "Highest reading of the gauge"))
              .how("All plugs out, throttle open. The same strokes for each.")
              .between(Unit.PSI, 0, 400)
              .source(Sources.TM_230),
          ReadingPlan.of(
                  Feature.COMPRESSION, "compression-wet", "Compression, wet", Derivation.VALUE)
              .at(Station.in(PRESSURE, "highest", "Highest reading, oil in the cylinder"))
              .how(
                  "A spoon of engine oil through the plug hole. The same strokes. Horizontal"
                      + " cylinders: oil pools at the bottom. It tells less.")
              .between(Unit.PSI, 0, 500)
              .source(Sources.TM_230),
          ReadingPlan.of(Feature.COMPRESSION, "leak-down", "Leak-down", Derivation.LEAK)
              .at(Station.in(PRESSURE, "supply", "Regulated pressure, such as 80 psi"))
              .at(Station.in(PRESSURE, "held", "Pressure that the cylinder holds"))
              .how(
                  "Top dead center of compression. Air slowly: the crank can turn. No wrench on it.")
              .between(Unit.PSI, 0, 200)
              .source(Sources.AC_43),
          ReadingPlan.of(
                  Feature.COMPRESSION, "leak-percent", "Leak-down in percent", Derivation.VALUE)
              .at(Station.in(UnitChoice.PERCENT, "leak", "What the tester shows"))
              .how("For a tester that shows percent. The crank can turn: no wrench on it.")
              .between(Unit.PERCENT, 0, 100)
              .source(Sources.TM_230),
          oil("oil-cold-idle", "Oil pressure, cold, idle", "Engine cold, at idle"),
          oil("oil-cold-speed", "Oil pressure, cold, at speed", "Engine cold, at a held speed"),
          oil("oil-hot-idle", "Oil pressure, hot, idle", "Engine hot, at idle"),
          oil("oil-hot-speed", "Oil pressure, hot, at speed", "Engine hot, at a held speed"),
          ReadingPlan.of(Feature.RUNNING, "vacuum-idle", "Vacuum at idle", Derivation.AT)
              .at(Station.in(UnitChoice.VACUUM, "vacuum", "Middle of where the needle is"))
              .at(speed())
              .how("Gauge on the intake manifold, engine warm.")
              .between(Unit.INCH_OF_MERCURY, 0, 30)
              .source(Sources.TM_677));

  private TeardownPlans() {}

  private static ReadingPlan oil(String key, String title, String words) {
    return ReadingPlan.of(Feature.RUNNING, key, title, Derivation.AT)
        .at(Station.in(PRESSURE, "pressure", words))
        .at(speed())
        .how("A gauge in place of the sender. The right oil, at its mark.")
        .between(Unit.PSI, 0, 150)
        .source(Sources.TM_272);
  }

  private static Station speed() {
    return new Station("speed", "Engine speed", Dimension.SPEED).between(Unit.RPM, 200, 8000);
  }
}
