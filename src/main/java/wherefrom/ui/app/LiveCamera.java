package wherefrom.ui.app;

import javafx.scene.layout.Region;

/** The camera's picture beside the work, with a word on what it sees. */
public interface LiveCamera {

  /** Makes one, not yet running. */
  @FunctionalInterface
  interface Maker {
    LiveCamera make(ScreenContext context, Listener listener);
  }

  /** Told on the window's thread what the camera sees. */
  interface Listener {
    /** A tag has come into view and is read: told once, until it has left. */
    void read(String text);

    /**
     * A tag stays in view that cannot be read, or several do.
     *
     * @param hint what would help, in a sentence; empty once that is over
     */
    void ask(String hint);

    /** What it sees now, in two words or three, for where the picture has no room. */
    void brief(String words);

    /** Why there is no picture, in a sentence, for where the pane that says it has no room. */
    void failed(String sentence);
  }

  /** The picture with its words, always the same. */
  Region pane();

  /** Opens the camera and reads until {@link #stop}. */
  void start();

  /** Lets the camera go. */
  void stop();
}
