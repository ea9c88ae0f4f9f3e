package wherefrom.ui.app;

/** A screen that tells the person what keeps the camera from reading. */
public interface Watching extends Scannable {
  /**
   * The camera asks for something.
   *
   * @param hint what would help, in a sentence; empty when it is no longer wanted
   */
  void ask(String hint);
}
