package wherefrom.ui.app;

/** Takes typing from a real keyboard. */
public interface Typable {
  /** Takes one character that can be shown. */
  void type(String character);

  /** Takes the last character back. */
  void erase();

  /** Enter was pressed. */
  void enter();
}
