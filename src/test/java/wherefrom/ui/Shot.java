package wherefrom.ui;

import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import wherefrom.ui.app.Screen;
import wherefrom.ui.sample.SampleJob;
import wherefrom.ui.sample.SampleWindow;

/**
 * A screen in a state that it can be in, to be looked over.
 *
 * @param name of the picture's file
 * @param screen the class that must be up
 * @param large the class that must be up instead where large letters have moved it
 * @param arrange brings the window there
 */
record Shot(
    String name,
    Class<? extends Screen> screen,
    Class<? extends Screen> large,
    Consumer<SampleWindow> arrange) {

  /** A screen that is the same one whatever the letters. */
  Shot(String name, Class<? extends Screen> screen, Consumer<SampleWindow> arrange) {
    this(name, screen, screen, arrange);
  }

  /** A screen over a job of its own for every picture. */
  static Shot of(
      String name,
      Class<? extends Screen> screen,
      Supplier<SampleJob> job,
      BiConsumer<SampleWindow, SampleJob> arrange) {
    return new Shot(
        name,
        screen,
        window -> {
          SampleJob sample = job.get();
          window.shell.context().open(sample.job);
          arrange.accept(window, sample);
        });
  }

  /** Whether a window shows it: as it is, or as letters that are large for the glass have it. */
  boolean isUp(SampleWindow window) {
    Screen current = window.shell.current();
    boolean text = window.shell.context().settings().textPercent() > 100;
    return screen.isInstance(current) || (text && large.isInstance(current));
  }

  @Override
  public String toString() {
    return name;
  }
}
