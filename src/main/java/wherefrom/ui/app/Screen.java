package wherefrom.ui.app;

import javafx.scene.layout.Region;

/**
 * One screen of the window. A screen that takes scans is {@link Scannable} too, one that takes
 * typing is {@link Typable}.
 */
public interface Screen {
  /** What stands in the top bar. */
  String title();

  /** The screen's contents, the same on every call. */
  Region view();

  /** The screen has come up, or has come back after another. */
  default void shown() {}

  /** The screen has gone: let go of cameras and sounds. */
  default void hidden() {}

  /** The job has changed under the screen, as by an undo. */
  default void changed() {}

  /** A job was copied to the second folder, or could not be. */
  default void copied() {}

  /** Whether it works on the open job: the top bar then shows how much is to fit, and UNDO. */
  default boolean onJob() {
    return true;
  }

  /** What the UNDO key would take back here, in few words. */
  default String undoes(Desk desk) {
    return UndoWords.next(desk.getJob());
  }

  /** What the UNDO key does here. */
  default void undo(Desk desk) {
    desk.takeBack();
  }
}
