package wherefrom.ui.app;

/** Takes typing from a real keyboard. */
public interface Typable {
  /** Takes one character that can be shown. */
  void type(String character);

  /** Takes the last character back. */
  void erase();

  /** What is typed stands as it does now again when this is run: what came since was a scan. */
  Runnable remember();

  /** Enter was pressed. */
  void enter();
}
