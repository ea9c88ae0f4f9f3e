package wherefrom.ui.app;

/** Makes a screen. */
@FunctionalInterface
public interface ScreenMaker {
  /**
   * Makes the screen.
   *
   * @param item the part that the screen is about; 0 where none is meant
   */
  Screen make(ScreenContext context, int item);
}
