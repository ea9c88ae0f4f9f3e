package wherefrom.job.settings;

/**
 * The part of a screen that windows may cover, without the system's bars, in the system's own
 * pixels.
 *
 * @param x of its left edge; less than 0 where it is a screen to the left of the first
 * @param y of its upper edge
 */
public record ScreenArea(double x, double y, double width, double height) {

  /** How many square pixels of a window it shows. */
  double shared(WindowPlace window) {
    double across = Math.min(x + width, window.x() + window.width()) - Math.max(x, window.x());
    double down = Math.min(y + height, window.y() + window.height()) - Math.max(y, window.y());
    return Math.max(0, across) * Math.max(0, down);
  }

  /** The window within this screen: no larger than it, and moved no further than it must be. */
  WindowPlace hold(WindowPlace window) {
    double wide = Math.min(width, window.width());
    double high = Math.min(height, window.height());
    return new WindowPlace(
        window.state(),
        Math.max(x, Math.min(x + width - wide, window.x())),
        Math.max(y, Math.min(y + height - high, window.y())),
        wide,
        high);
  }
}
