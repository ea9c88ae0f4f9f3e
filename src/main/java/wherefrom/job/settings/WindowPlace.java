package wherefrom.job.settings;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where the window stood last, in the system's own pixels.
 *
 * @param state how it filled the screen
 * @param x of its left edge; as width and height counted only where it is {@link State#WINDOW}
 * @param y of its upper edge
 */
public record WindowPlace(State state, double x, double y, double width, double height) {
  /** The screen but for the system's bars, until the person wants it otherwise. */
  public static final WindowPlace FIRST = new WindowPlace(State.MAXIMIZED, 0, 0, 0, 0);

  private static final double LEAST = 200;
  private static final double MOST = 40_000;

  /** Made when a place is first read: a window that opens for the first time does without. */
  private static final class Written {
    static final Pattern FORM = Pattern.compile("(full|maximized|window)((?: -?[0-9]{1,5}){4})");
  }

  /** How a window fills the screen. */
  public enum State {
    FULL,
    MAXIMIZED,
    WINDOW
  }

  /** As kept in the settings: {@code window 40 20 1280 800}. */
  public String written() {
    return String.format(
        Locale.ROOT,
        "%s %.0f %.0f %.0f %.0f",
        state.name().toLowerCase(Locale.ROOT),
        x,
        y,
        width,
        height);
  }

  /** Reads what {@link #written} gives; empty where it is something else or no window's size. */
  public static Optional<WindowPlace> read(String written) {
    Matcher found = Written.FORM.matcher(written);
    if (!found.matches()) {
      return Optional.empty();
    }
    State state = State.valueOf(found.group(1).toUpperCase(Locale.ROOT));
    String[] edges = found.group(2).strip().split(" ", -1);
    WindowPlace place =
        new WindowPlace(
            state,
            Double.parseDouble(edges[0]),
            Double.parseDouble(edges[1]),
            Double.parseDouble(edges[2]),
            Double.parseDouble(edges[3]));
    return state != State.WINDOW || place.isSize() ? Optional.of(place) : Optional.empty();
  }

  /**
   * Where the window can stand on the screens that are there now. One that reaches over several of
   * them and is seen whole stays; else it comes within the screen that shows most of it, or within
   * the first where none shows any.
   *
   * @param screens the screens that are there, the system's first one first; may be none
   */
  public WindowPlace on(List<ScreenArea> screens) {
    double seen = screens.stream().mapToDouble(screen -> screen.shared(this)).sum();
    if (screens.isEmpty() || seen >= width * height) {
      return this;
    }
    ScreenArea most = screens.get(0);
    for (ScreenArea screen : screens) {
      most = screen.shared(this) > most.shared(this) ? screen : most;
    }
    return most.hold(this);
  }

  private boolean isSize() {
    return width >= LEAST && height >= LEAST && width <= MOST && height <= MOST;
  }
}
