package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** The screens from the first to the one that is up; Back leads from each to the one below. */
final class ScreenStack {
  /**
   * @param letters the size of its letters as a factor
   */
  private record Level(Supplier<? extends Screen> maker, Screen screen, double letters) {}

  private final List<Level> levels = new ArrayList<>();

  void push(Supplier<? extends Screen> maker, double letters) {
    levels.add(new Level(maker, maker.get(), letters));
  }

  /** The size of the letters on the screen that is up. */
  double letters() {
    return levels.get(levels.size() - 1).letters();
  }

  /** Makes the screen that is up once more, with letters of another size. */
  void remakeTop(double letters) {
    Level top = levels.remove(levels.size() - 1);
    levels.add(new Level(top.maker(), top.maker().get(), letters));
  }

  /** The screen that is up. */
  Screen current() {
    return levels.get(levels.size() - 1).screen();
  }

  /** How many screens lie below the one that is up. */
  int depth() {
    return levels.size() - 1;
  }

  /** Takes the uppermost away, unless it is the only one. */
  boolean pop() {
    if (levels.size() < 2) {
      return false;
    }
    levels.remove(levels.size() - 1);
    return true;
  }

  /** Takes away what lies on top of a screen; the lowest stays where that is none of them. */
  void popTo(Screen screen) {
    while (!current().equals(screen) && pop()) {
      // The next one is looked at.
    }
  }

  /** Leaves so many of the lowest. */
  void keep(int lowest) {
    levels.subList(Math.min(lowest, levels.size()), levels.size()).clear();
  }

  /** Makes all of them again with letters of this size, as after a change of sizes. */
  void remake(double letters) {
    levels.replaceAll(level -> new Level(level.maker(), level.maker().get(), letters));
  }
}
