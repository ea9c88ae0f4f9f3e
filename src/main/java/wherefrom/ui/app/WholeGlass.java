package wherefrom.ui.app;

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

  /** Whether a screen takes the whole glass now. */
  static boolean is(Screen screen) {
    return screen instanceof WholeGlass glass && glass.whole();
  }
}
