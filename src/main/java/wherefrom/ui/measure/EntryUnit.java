package wherefrom.ui.measure;

import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitChoice;
import wherefrom.quantity.UnitSystem;

/** The unit in which a figure is being typed; a digital gauge may name it behind its figure. */
final class EntryUnit {
  private final UnitChoice offered;
  private final StringBuilder letters = new StringBuilder();
  private Unit unit;

  EntryUnit(UnitSystem system, UnitChoice units) {
    offered = units;
    unit = units.usual(system);
  }

  Unit unit() {
    return unit;
  }

  void turn() {
    unit = offered.after(unit);
  }

  /** Takes a letter that was typed behind the figure. */
  void type(String character) {
    if (character.isBlank()) {
      return;
    }
    letters.append(character);
    Unit.find(letters.toString())
        .filter(offered.offered()::contains)
        .ifPresent(named -> unit = named);
  }

  /** The next figure begins. */
  void settle() {
    letters.setLength(0);
  }

  /** The unit, and what of its name was typed, stand as they do now again when it is run. */
  Runnable remember() {
    Unit was = unit;
    String typed = letters.toString();
    return () -> {
      unit = was;
      letters.replace(0, letters.length(), typed);
    };
  }
}
