package wherefrom.ui.debris;

import java.util.EnumMap;
import java.util.Map;
import wherefrom.rules.debris.DebrisPlace;

/** Notes on what was found that wait for the look that they belong to. */
final class DebrisNotes {
  private final Map<DebrisPlace, String> notes = new EnumMap<>(DebrisPlace.class);

  /** What was noted of a place; empty where nothing waits. */
  String at(DebrisPlace place) {
    return notes.getOrDefault(place, "");
  }

  void keep(DebrisPlace place, String note) {
    notes.put(place, note);
  }
}
