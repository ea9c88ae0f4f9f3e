package wherefrom.job;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.ConsequenceRules;
import wherefrom.rules.consequence.Setting;

/** What changes mean for one engine, each worked out once: it is asked after every entry. */
final class Meanings {
  private record Key(Change change, LifterType lifters) {}

  private final Setting setting;

  /** States of several threads may know it. */
  private final Map<Key, List<Consequence>> known = new ConcurrentHashMap<>();

  Meanings(Layout layout, Collection<Place> places) {
    this.setting = new Setting(layout, places);
  }

  /** Whether it speaks of an engine with these places tracked. */
  boolean isOf(Layout layout, Collection<Place> places) {
    return setting.layout().equals(layout)
        && List.copyOf(setting.places()).equals(List.copyOf(places));
  }

  /** The engine as it came in. */
  Setting setting() {
    return setting;
  }

  /** What a change means for the engine as changes before it have left it. */
  List<Consequence> of(Change change, Setting now) {
    return known.computeIfAbsent(
        new Key(change, now.lifters()), it -> ConsequenceRules.of(change, now));
  }
}
