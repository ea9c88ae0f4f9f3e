package wherefrom.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wherefrom.job.By;
import wherefrom.job.ports.Services;
import wherefrom.job.settings.ServerAddress;

/**
 * Where the jobs of a call lie, at which bench it is made and by whom: words that every command
 * takes, wherever they stand before {@code --}.
 *
 * @param words the call without them
 */
record Where(List<String> words, Map<String, String> given) {
  private static final String SHOP = "--shop";
  private static final String BENCH = "--bench";
  private static final String WHO = "--who";
  private static final Set<String> OURS = Set.of(SHOP, BENCH, WHO);

  static Where of(List<String> called) throws BadInput {
    List<String> rest = new ArrayList<>();
    Map<String, String> given = new LinkedHashMap<>();
    int end = Call.beforeEnd(called).size();
    for (int at = 0; at < called.size(); at++) {
      String[] pair = called.get(at).split("=", 2);
      if (at >= end || !OURS.contains(pair[0])) {
        rest.add(called.get(at));
        continue;
      }
      boolean attached = pair.length == 2;
      if (!attached && at + 1 >= end) {
        throw new BadInput(pair[0] + " needs a value.");
      }
      String value = attached ? pair[1] : called.get(++at);
      if (given.put(pair[0], value) != null) {
        throw new BadInput(pair[0] + " stands twice.");
      }
    }
    return new Where(rest, given);
  }

  /** The services for it, made of those of this machine. */
  Services services(Services here) throws BadInput {
    if (given.isEmpty()) {
      return here;
    }
    int bench = bench();
    return Refusals.get(() -> services(here, new By(bench, given.getOrDefault(WHO, ""))));
  }

  private Services services(Services here, By by) {
    return given.containsKey(SHOP)
        ? here.servers().on(here, ServerAddress.read(given.get(SHOP)), by)
        : here.at(by);
  }

  private int bench() throws BadInput {
    String bench = given.getOrDefault(BENCH, "1");
    try {
      return Integer.parseInt(bench);
    } catch (NumberFormatException e) {
      throw new BadInput(BENCH + ": \"" + bench + "\" is not a whole number.");
    }
  }
}
