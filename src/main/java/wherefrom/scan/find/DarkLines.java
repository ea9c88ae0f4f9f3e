package wherefrom.scan.find;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import wherefrom.scan.grey.Level;

/**
 * Thin dark lines with light on both sides, by how the grey values curve: unlike a patch of dark
 * pixels a line ends where another begins that runs across it.
 */
final class DarkLines {
  /** Pixels from a line's middle to what is light beside it. */
  private static final int STEP = 2;

  /** Grey values by which a line is darker than both sides together. */
  private static final double DEEP = 24;

  /** Of how it curves across; what curves more along is a spot. */
  private static final double ALONG = 0.5;

  /** Radians between the directions of one line's pixels. */
  private static final double STRAIGHT = 0.35;

  private static final int LEAST_PIXELS = 10;

  /** Of a line that is as wide as it is long, by the standard deviations of its pixels. */
  private static final double THIN = 0.3;

  private final int width;
  private final int height;
  private final byte[] pixels;

  /** Direction across a line at each pixel, NaN where none is or where it is taken. */
  private final float[] across;

  private int[] queue = new int[64];

  /**
   * A line, in pixels of its level.
   *
   * @param x of its middle
   * @param direction in radians, from -pi/2 to pi/2
   */
  record Line(double x, double y, double direction, double length) {}

  DarkLines(Level level) {
    width = level.width();
    height = level.height();
    pixels = level.pixels();
    across = new float[width * height];
  }

  List<Line> list() {
    for (int at = 0; at < across.length; at++) {
      int x = at % width;
      int y = at / width;
      boolean inside = x >= STEP && y >= STEP && x < width - STEP && y < height - STEP;
      across[at] = inside ? direction(at) : Float.NaN;
    }
    List<Line> lines = new ArrayList<>();
    for (int at = 0; at < across.length; at++) {
      if (!Float.isNaN(across[at])) {
        line(grow(at), lines);
      }
    }
    return lines;
  }

  private float direction(int at) {
    int down = STEP * width;
    int twice = 2 * grey(at);
    int xx = grey(at - STEP) + grey(at + STEP) - twice;
    int yy = grey(at - down) + grey(at + down) - twice;
    if (xx + yy < DEEP * (1 - ALONG)) {
      return Float.NaN;
    }
    double xy =
        (grey(at + down + STEP)
                + grey(at - down - STEP)
                - grey(at + down - STEP)
                - grey(at - down + STEP))
            / 4.0;
    double root = Math.sqrt((xx - yy) * (double) (xx - yy) + 4 * xy * xy);
    double most = (xx + yy + root) / 2;
    double least = (xx + yy - root) / 2;
    return most > DEEP && Math.abs(least) < ALONG * most
        ? (float) (Math.atan2(2 * xy, xx - yy) / 2)
        : Float.NaN;
  }

  private int grey(int at) {
    return pixels[at] & 0xFF;
  }

  /** Takes the pixels that lie together and run as the first does; gives how many. */
  private int grow(int seed) {
    float wanted = across[seed];
    int count = 0;
    count = take(seed, count);
    for (int next = 0; next < count; next++) {
      int at = queue[next];
      for (int row = at - width; row <= at + width; row += width) {
        for (int near = row - 1; near <= row + 1; near++) {
          // pixels at the picture's edge have no direction
          if (between(across[near], wanted) < STRAIGHT) {
            count = take(near, count);
          }
        }
      }
    }
    return count;
  }

  /** Puts a pixel behind those of the line; no other line takes it. */
  private int take(int at, int count) {
    if (count == queue.length) {
      queue = Arrays.copyOf(queue, 2 * count);
    }
    queue[count] = at;
    across[at] = Float.NaN;
    return count + 1;
  }

  /** Between two directions of lines, 0 to pi/2; NaN where one is. */
  static double between(double one, double other) {
    double apart = Math.abs(one - other) % Math.PI;
    return Math.min(apart, Math.PI - apart);
  }

  private void line(int count, List<Line> lines) {
    if (count < LEAST_PIXELS) {
      return;
    }
    double x = 0;
    double y = 0;
    for (int next = 0; next < count; next++) {
      x += queue[next] % width;
      int row = queue[next] / width;
      y += row;
    }
    x /= count;
    y /= count;
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int next = 0; next < count; next++) {
      double right = queue[next] % width - x;
      int row = queue[next] / width;
      double down = row - y;
      xx += right * right / count;
      xy += right * down / count;
      yy += down * down / count;
    }
    double root = Math.sqrt((xx - yy) * (xx - yy) + 4 * xy * xy);
    double most = (xx + yy + root) / 2;
    double least = (xx + yy - root) / 2;
    if (least < THIN * THIN * most) {
      lines.add(new Line(x + 0.5, y + 0.5, Math.atan2(2 * xy, xx - yy) / 2, Math.sqrt(12 * most)));
    }
  }
}
