package wherefrom.ui.app;

import wherefrom.parts.Action;

/** Takes what a scanner, the camera or a picture file has read. */
public interface Scannable {
  /**
   * Takes one code.
   *
   * @param text sixteen digits as a rule; anything else that was read is handed over as it came
   */
  void scan(String text);

  /**
   * Whether an action card means something of its own here now; the others work the keys on the
   * glass, as {@link ActionCards} says.
   */
  default boolean takes(Action card) {
    return false;
  }

  /** Takes one code that was looked up on its way; the window is drawn once it has been taken. */
  default void scan(Scanned scanned) {
    scan(scanned.text());
  }
}
