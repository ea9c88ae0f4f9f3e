package wherefrom.inspection;

import static wherefrom.inspection.Sources.PRACTICE;
import static wherefrom.inspection.Sources.TM_230;
import static wherefrom.inspection.Sources.TM_677;

import java.util.List;

/** What is heard, seen and photographed while the engine is still together. */
final class TeardownChecks {
  static final List<Check> ROWS =
      List.of(
          leak("intake", "Air at the intake?", "At the carburetor, throttle open."),
          leak("exhaust", "Air at the exhaust?", "At the tail pipe or the manifold."),
          leak("crankcase", "Air in the crankcase?", "At the oil filler or the dipstick."),
          Check.of(Feature.COMPRESSION, "leak-coolant", "Bubbles in the coolant?")
              .how("Radiator cold, cap off. Air on the cylinder.", "The filler neck.")
              .tells("No bubbles.", "A bubble now and then.", "A stream of bubbles.")
              .source(TM_230),
          leak("neighbor", "Air in the next cylinder?", "At the plug holes beside this one."),
          needle("low", "Steady, but low?", "Holds still below the others' usual reading.")
              .source(TM_677),
          needle("beat", "Drops at a regular beat?", "One dip each time, evenly.").source(PRACTICE),
          needle("now-and-then", "Drops now and then?", "A dip without a beat.").source(PRACTICE),
          needle("wider", "Swings wider with speed?", "More swing as the engine speeds up.")
              .source(TM_677),
          needle("narrower", "Swings smaller and faster with speed?", "Less swing, but quicker.")
              .source(TM_677),
          needle("steadies", "Unsteady, then still with speed?", "Still above idle.")
              .source(TM_677),
          needle("no-sweep", "No wide sweep on the throttle?", "Open it and let it close.")
              .source(TM_677),
          photo("hoses", "Vacuum and coolant hoses", "Each end of each hose."),
          photo("wires", "Wires and plug leads", "Distributor cap with its leads; plugs, senders."),
          photo("brackets", "Brackets, spacers, belts", "Each with its bolts, from two sides."),
          photo("linkage", "Throttle linkage, fuel lines", "Springs, clips and their holes."));

  private TeardownChecks() {}

  private static Check leak(String where, String title, String spot) {
    return Check.of(Feature.COMPRESSION, "leak-" + where, title)
        .how("Piston at top dead center of compression. Air on. Listen.", spot)
        .tells("Nothing to hear.", "A faint hiss.", "A strong hiss.")
        .source(TM_230);
  }

  private static Check needle(String key, String title, String spot) {
    return Check.of(Feature.RUNNING, "needle-" + key, title)
        .how("Gauge on the intake manifold, engine warm.", spot)
        .tells("No.", "A little.", "Clearly.");
  }

  private static Check photo(String key, String title, String spot) {
    return Check.of(Feature.OUTSIDE, key + "-photo", title)
        .how("Mark each one, then photograph it before it comes off.", spot)
        .tells("Marked and photographed.", "Some are not.", "Came off without.");
  }
}
