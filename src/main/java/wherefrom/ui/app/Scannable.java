package wherefrom.ui.app;

/** Takes what a scanner, the camera or a picture file has read. */
public interface Scannable {
  /**
   * Takes one code.
   *
   * @param text sixteen digits as a rule; anything else that was read is handed over as it came
   */
  void scan(String text);

  /** Takes one code that was looked up on its way; the window is drawn once it has been taken. */
  default void scan(Scanned scanned) {
    scan(scanned.text());
  }
}
