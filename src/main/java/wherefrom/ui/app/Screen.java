package wherefrom.ui.app;

import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.job.LoggedEntry;

/**
 * One screen of the window. A screen that takes scans is {@link Scannable} too, one that takes
 * typing is {@link Typable}.
 */
public interface Screen {
  /** What stands above it. */
  String title();

  /**
   * What it is about: with its class it tells this screen from every other. Where two with one
   * title are about different things, it must be more than that.
   */
  default Object identity() {
    return title();
  }

  /** A few words beside the title on how things stand; empty for the job's name. */
  default String aside() {
    return "";
  }

  /** The keys of the rail from the top; Help and UNDO have their places besides. */
  default List<RailKey> rail(StandardRail standard) {
    return standard.all();
  }

  /** What to do now. */
  default Help help() {
    return Help.of(getClass());
  }

  /**
   * What the help shows beside its sentences, such as the part that they are about; empty for the
   * sign of help.
   *
   * @param side of its square, in pixels
   */
  default Optional<Region> helpPicture(double side) {
    return Optional.empty();
  }

  /** The screen's contents, the same on every call. */
  Region view();

  /** The screen has come up, or has come back after another. */
  default void shown() {}

  /** The screen has gone: let go of cameras and sounds. */
  default void hidden() {}

  /**
   * It takes the place of a screen of its kind that had no room, or letters of another size: what
   * was typed there is not lost.
   */
  default void takeOver(Screen before) {}

  /**
   * Escape is pressed: puts away what stands over the screen's work.
   *
   * @return whether that was so; else it leads back as the key Back does
   */
  default boolean escape() {
    return false;
  }

  /** The job has changed under the screen, as by an undo. */
  default void changed() {}

  /** Its letters became smaller where it stands: how much it says may go by their size. */
  default void shrunk() {}

  /** A job was copied to the second folder, or could not be. */
  default void copied() {}

  /**
   * Whether it works on the open job: the job's name then stands beside the title, and there is
   * UNDO.
   */
  default boolean onJob() {
    return true;
  }

  /** What the UNDO key would take back here, in few words. */
  default String undoes(ScreenContext context) {
    return UndoWords.next(context.getJob());
  }

  /**
   * The step that UNDO takes back here; empty where it takes back what stands on the screen, or
   * nothing.
   */
  default Optional<LoggedEntry> undone(ScreenContext context) {
    return context.getJob().findLastStep();
  }

  /** What the UNDO key does here. */
  default void undo(ScreenContext context) {
    context.takeBack();
  }
}
