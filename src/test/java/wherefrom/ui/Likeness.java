package wherefrom.ui;

import java.awt.image.BufferedImage;
import java.util.Arrays;

/**
 * How alike two pictures of one size are, square by square. Other machines draw the edges of
 * letters a little darker or lighter, which the mean of a square hardly shows; another word, key or
 * shape it shows.
 */
final class Likeness {
  /** The side of a square, in pixels: about as high as the smallest letter. */
  private static final int SIDE = 8;

  /** How far the means of a square may lie apart in each color, of 255. */
  private static final int APART = 20;

  private Likeness() {}

  /** How many squares differ. */
  static int differing(BufferedImage one, BufferedImage other) {
    int differing = 0;
    for (int y = 0; y + SIDE <= one.getHeight(); y += SIDE) {
      for (int x = 0; x + SIDE <= one.getWidth(); x += SIDE) {
        if (apart(mean(one, x, y), mean(other, x, y)) > APART) {
          differing++;
        }
      }
    }
    return differing;
  }

  /** The largest of the three differences. */
  private static int apart(int[] one, int[] other) {
    int most = 0;
    for (int color = 0; color < one.length; color++) {
      most = Math.max(most, Math.abs(one[color] - other[color]));
    }
    return most;
  }

  /** Red, green and blue. */
  private static int[] mean(BufferedImage picture, int left, int top) {
    int[] sums = new int[3];
    for (int pixel : picture.getRGB(left, top, SIDE, SIDE, null, 0, SIDE)) {
      sums[0] += pixel >> 16 & 0xff;
      sums[1] += pixel >> 8 & 0xff;
      sums[2] += pixel & 0xff;
    }
    Arrays.setAll(sums, color -> sums[color] / (SIDE * SIDE));
    return sums;
  }
}
