package wherefrom.ui;

import java.util.function.Consumer;
import wherefrom.ui.app.Screen;
import wherefrom.ui.sample.SampleWindow;

/**
 * A screen in a state that it can be in, to be looked over.
 *
 * @param name of the picture's file
 * @param screen the class that must be up
 * @param arrange brings the window there
 */
record Shot(String name, Class<? extends Screen> screen, Consumer<SampleWindow> arrange) {
  @Override
  public String toString() {
    return name;
  }
}
