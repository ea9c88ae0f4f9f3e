package wherefrom.ui.app;

import java.util.Optional;

/**
 * A screen that can take the whole glass: of the rail then nothing but UNDO is left, and there is
 * no row for messages, so that it shows them itself.
 */
public interface WholeGlass extends Screen {

  /** Whether it takes the whole glass now. */
  boolean whole();

  /**
   * Shows what would stand in the title row, until it is told otherwise.
   *
   * @param sentence empty when there is nothing to say
   */
  void message(String sentence);

  /** What it stands there for; where that is another, no ring of before lies on its keys. */
  Object standsFor();

  /** What a screen that takes the whole glass stands there for; empty of one that does not. */
  static Optional<Object> standing(Screen screen) {
    return screen instanceof WholeGlass glass && glass.whole()
        ? Optional.of(glass.standsFor())
        : Optional.empty();
  }

  /** Whether a screen takes the whole glass now. */
  static boolean is(Screen screen) {
    return screen instanceof WholeGlass glass && glass.whole();
  }
}
