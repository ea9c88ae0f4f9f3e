package wherefrom.ui.app;

import wherefrom.parts.Action;
import wherefrom.parts.TagType;

/** Takes what a scanner, the camera or a picture file has read. */
public interface Scannable {
  /**
   * Whether an action card means something of its own here now; the others work the keys on the
   * glass, as {@link ActionCards} says.
   */
  default boolean takes(Action card) {
    return false;
  }

  /**
   * Whether a tag of this type is what is asked for now: its typed figures are then not doubted,
   * though a part's tag lies one slip away.
   */
  default boolean expects(TagType type) {
    return false;
  }

  /**
   * Whether codes that are no tag of ours are wanted here, such as the numbers on boxes; they come
   * as they were read, whatever they stand for among typed codes.
   */
  default boolean takesNumbers() {
    return false;
  }

  /**
   * What is scanned next was scanned on another screen: it is no answer to what has just come up
   * here by itself.
   */
  default void begin() {}

  /** Takes one code; the window is drawn once it has been taken. */
  void scan(Scanned scanned);
}
