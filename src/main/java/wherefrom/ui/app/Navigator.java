package wherefrom.ui.app;

import java.util.function.Supplier;

/** Leads from screen to screen. */
public interface Navigator {
  /** The screen that is up. */
  Screen current();

  /** Whether this screen is up, or the one that was made anew in its place for other sizes. */
  boolean isUp(Screen screen);

  /** Goes to a screen; Back returns to this one. */
  void show(ScreenId id);

  /** Goes to a screen about one part; Back returns to this one. */
  void show(ScreenId id, int item);

  /** Goes to a screen of the caller's own, as for typing a word; Back returns to this one. */
  void open(Supplier<? extends Screen> maker);

  /** Returns to the screen before: a screen that has done its work leaves. */
  void back();

  /**
   * The way back of the key Back, of Escape and SKIP: as {@link #back}, but where the screen before
   * lies further down as well, to the lowest of it. Nobody goes back more often than there are
   * different screens.
   */
  void goBack();

  /** Returns to a screen that lies below, whatever was opened on top of it. */
  void backTo(Screen screen);

  /** To the open job's first screen, or to the jobs where none is open. */
  void home();

  /** To the list of jobs. */
  void jobs();

  /** Draws the top bar again and tells the screen that the job has changed. */
  void changed();
}
