package wherefrom.job;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wherefrom.engine.Layout;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.ConsequenceRules;
import wherefrom.rules.consequence.Setting;

/** What changes mean for one engine, each worked out once: it is asked after every entry. */
final class Meanings {
  private final Setting setting;
  private final Map<Change, List<Consequence>> known = new HashMap<>();

  Meanings(Layout layout, Collection<Place> places) {
    this.setting = new Setting(layout, places);
  }

  List<Consequence> of(Change change) {
    return known.computeIfAbsent(change, it -> ConsequenceRules.of(it, setting));
  }
}
