package wherefrom.ui.app;

import java.util.Optional;

/** Takes typing from a real keyboard. */
public interface Typable {
  /** The screen as one that takes typing now; empty where it does not. */
  static Optional<Typable> of(Screen screen) {
    return screen instanceof Typable open && open.isOpen() ? Optional.of(open) : Optional.empty();
  }

  /**
   * Whether its pad is up. Where it is not, what is typed is no figure of it: it would wait unseen
   * and stand before the next.
   */
  default boolean isOpen() {
    return true;
  }

  /** Takes one character that can be shown. */
  void type(String character);

  /** Takes the last character back. */
  void erase();

  /** What is typed stands as it does now again when this is run: what came since was a scan. */
  Runnable remember();

  /** Enter was pressed. */
  void enter();
}
