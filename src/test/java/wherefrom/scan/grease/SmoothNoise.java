package wherefrom.scan.grease;

import java.util.SplittableRandom;

/** Smooth noise between 0 and 1, octaves of bilinear lattice noise. */
final class SmoothNoise {
  /** A power of two. */
  private static final int LATTICE = 64;

  private final float[] lattice = new float[LATTICE * LATTICE];

  SmoothNoise(SplittableRandom random) {
    for (int at = 0; at < lattice.length; at++) {
      lattice[at] = (float) random.nextDouble();
    }
  }

  double at(double x, double y) {
    return 0.55 * octave(x, y)
        + 0.3 * octave(2.1 * x + 7, 2.1 * y + 3)
        + 0.15 * octave(4.3 * x + 1, 4.3 * y + 9);
  }

  private double octave(double x, double y) {
    int left = (int) Math.floor(x);
    int top = (int) Math.floor(y);
    double fx = ease(x - left);
    double fy = ease(y - top);
    double upper = node(left, top) * (1 - fx) + node(left + 1, top) * fx;
    double lower = node(left, top + 1) * (1 - fx) + node(left + 1, top + 1) * fx;
    return upper * (1 - fy) + lower * fy;
  }

  private static double ease(double part) {
    return part * part * (3 - 2 * part);
  }

  private double node(int x, int y) {
    return lattice[(y & (LATTICE - 1)) * LATTICE + (x & (LATTICE - 1))];
  }
}
