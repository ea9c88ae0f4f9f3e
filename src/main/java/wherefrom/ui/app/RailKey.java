package wherefrom.ui.app;

import wherefrom.ui.controls.Icon;

/**
 * A key of the rail.
 *
 * @param words one short word
 * @param spoken what a screen reader says; the word where nothing more is to be said
 * @param on whether it stands out: the camera runs, there is more to read
 */
public record RailKey(Icon icon, String words, String spoken, Runnable act, boolean on) {
  public RailKey(Icon icon, String words, Runnable act) {
    this(icon, words, words, act, false);
  }

  /** The same, with more to say aloud. */
  public RailKey saying(String aloud) {
    return new RailKey(icon, words, aloud, act, on);
  }
}
