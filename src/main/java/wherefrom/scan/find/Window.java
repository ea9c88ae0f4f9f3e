package wherefrom.scan.find;

import wherefrom.scan.geometry.Pose;

/**
 * A part of a picture in pixels.
 *
 * @param right the column after its last
 * @param bottom the row after its last
 */
public record Window(int left, int top, int right, int bottom) {
  /** As much as there is. */
  static final Window WHOLE = new Window(0, 0, Integer.MAX_VALUE, Integer.MAX_VALUE);

  /**
   * The square round a place's centre.
   *
   * @param reach from the centre to its sides, in pixels
   */
  public static Window round(Pose place, double reach) {
    return new Window(
        (int) Math.floor(place.centreX() - reach),
        (int) Math.floor(place.centreY() - reach),
        (int) Math.ceil(place.centreX() + reach),
        (int) Math.ceil(place.centreY() + reach));
  }

  public boolean holds(Pose place) {
    return place.centreX() >= left
        && place.centreX() < right
        && place.centreY() >= top
        && place.centreY() < bottom;
  }

  /** The same on a smaller picture, as far as it lies within it; empty where it does not. */
  Window on(int width, int height, int shrink) {
    int from = Math.min(width, Math.max(0, left / shrink));
    int first = Math.min(height, Math.max(0, top / shrink));
    return new Window(
        from,
        first,
        Math.max(from, Math.min(width, right / shrink)),
        Math.max(first, Math.min(height, bottom / shrink)));
  }
}
