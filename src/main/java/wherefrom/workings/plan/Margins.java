package wherefrom.workings.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wherefrom.workings.Result;
import wherefrom.workings.catalogue.Minimum;
import wherefrom.workings.catalogue.PistonToHead;
import wherefrom.workings.catalogue.PistonToValve;

/** The gaps of a plan's results that have a usual least. */
final class Margins {
  private Margins() {}

  static List<Margin> of(Result result) {
    List<Margin> margins = new ArrayList<>();
    leasts()
        .forEach(
            (key, least) ->
                result.findValue(key).ifPresent(gap -> margins.add(new Margin(gap, least))));
    return List.copyOf(margins);
  }

  private static Map<String, Minimum> leasts() {
    Map<String, Minimum> leasts = new LinkedHashMap<>();
    leasts.put(PistonToHead.KEY, PistonToHead.LEAST);
    for (LiftLimit limit : LiftLimit.values()) {
      leasts.put(limit.key(), limit.least());
    }
    leasts.put("piston-to-intake", PistonToValve.LEAST_INTAKE);
    leasts.put("piston-to-exhaust", PistonToValve.LEAST_EXHAUST);
    return leasts;
  }
}
