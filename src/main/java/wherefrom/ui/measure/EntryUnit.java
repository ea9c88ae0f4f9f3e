package wherefrom.ui.measure;

import java.util.List;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;

/** The unit in which a figure is being typed; a digital gauge may name it behind its figure. */
final class EntryUnit {
  private final List<Unit> offered;
  private final StringBuilder letters = new StringBuilder();
  private Unit unit;

  EntryUnit(UnitSystem system, Dimension dimension) {
    boolean inch = system == UnitSystem.INCH;
    offered =
        switch (dimension) {
          case FORCE -> List.of(Unit.POUND, Unit.NEWTON);
          case MASS -> List.of(Unit.GRAM, Unit.OUNCE);
          default -> List.of(Unit.INCH, Unit.MILLIMETRE);
        };
    // A scale for parts shows grams, whatever the job is in.
    unit = inch || dimension == Dimension.MASS ? offered.get(0) : offered.get(1);
  }

  Unit unit() {
    return unit;
  }

  void turn() {
    unit = offered.get(0) == unit ? offered.get(1) : offered.get(0);
  }

  /** Takes a letter that was typed behind the figure. */
  void type(String character) {
    if (character.isBlank()) {
      return;
    }
    letters.append(character);
    Unit.find(letters.toString()).filter(offered::contains).ifPresent(named -> unit = named);
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
