package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import wherefrom.ui.controls.Touch;

/** The screens from the first to the one that is up; Back leads from each to the one below. */
final class ScreenStack {
  /**
   * @param touch its own, with the size of its letters
   * @param before those that stood here before it was made anew: others may know them still
   */
  private record Level(
      Supplier<? extends Screen> maker, Screen screen, Touch touch, List<Screen> before) {
    static Level made(Supplier<? extends Screen> maker, Touch touch) {
      return new Level(maker, maker.get(), touch, List.of());
    }

    /** The same once more; what was typed on it is not lost. */
    Level anew(Touch letters) {
      List<Screen> all = new ArrayList<>(before);
      all.add(screen);
      Level again = new Level(maker, maker.get(), letters, List.copyOf(all));
      if (!again.screen.equals(screen)) {
        again.screen.takeOver(screen);
      }
      return again;
    }

    boolean showsSame(Level other) {
      return screen.getClass().equals(other.screen.getClass())
          && screen.identity().equals(other.screen.identity());
    }

    boolean is(Screen one) {
      return screen.equals(one) || before.contains(one);
    }
  }

  private final List<Level> levels = new ArrayList<>();

  void push(Supplier<? extends Screen> maker, Touch touch) {
    levels.add(Level.made(maker, touch));
  }

  /** What the screen that is up was made with. */
  Touch touch() {
    return levels.get(levels.size() - 1).touch();
  }

  /** Makes the screen that is up once more, with letters of another size. */
  void remakeTop(Touch touch) {
    Level top = levels.remove(levels.size() - 1);
    levels.add(top.anew(touch));
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

  /**
   * Takes the uppermost away, and all above the lowest that shows the same as the next: who went
   * round in a loop need not go back all its rounds. What stands over the whole glass, as a stop
   * does, is never gone past.
   *
   * @return whether there was one to take
   */
  boolean popLoop() {
    if (!pop()) {
      return false;
    }
    keep(lowestAlike() + 1);
    return true;
  }

  /** Where the lowest is that shows the same as the uppermost, with nothing standing between. */
  private int lowestAlike() {
    Level next = levels.get(levels.size() - 1);
    int lowest = levels.size() - 1;
    for (int at = lowest; at >= 0 && !WholeGlass.is(levels.get(at).screen()); at--) {
      lowest = levels.get(at).showsSame(next) ? at : lowest;
    }
    return lowest;
  }

  /** Whether this screen is up, or the one that was made anew in its place. */
  boolean isUp(Screen screen) {
    return levels.get(levels.size() - 1).is(screen);
  }

  /** Takes away what lies on top of a screen; the lowest stays where that is none of them. */
  void popTo(Screen screen) {
    while (!isUp(screen) && pop()) {
      // The next one is looked at.
    }
  }

  /** Leaves so many of the lowest. */
  void keep(int lowest) {
    levels.subList(Math.min(lowest, levels.size()), levels.size()).clear();
  }

  /** Makes all of them again, each with its own letters, as after a change of sizes. */
  void remake(Supplier<Touch> letters) {
    levels.replaceAll(level -> level.anew(letters.get()));
  }
}
