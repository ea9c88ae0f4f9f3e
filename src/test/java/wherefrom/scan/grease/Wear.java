package wherefrom.scan.grease;

import java.awt.BasicStroke;
import java.awt.geom.Path2D;
import java.util.SplittableRandom;
import wherefrom.parts.LabelFrame;

/**
 * Paper that was crumpled, soaked, printed by heat or written on; severity runs from 0 to 1.
 *
 * <p>Smooth random displacement stands for crumpled paper as in the training data of document
 * dewarping (G.-W. Xie et al., Dewarping Document Image by Displacement Flow Estimation, 2020,
 * arXiv 2104.06815), faded and written-on prints as in A. Groleau et al., Augraphy: A Data
 * Augmentation Library for Document Images (2022, arXiv 2208.14558). That thermal print fades under
 * oil, heat and light, and that a dirty head leaves light lines along the feed, is common practice,
 * no source. The sizes are chosen, not measured.
 */
final class Wear {
  private static final int BLOCK = LabelArt.BLOCK;
  private static final double MODULE = BLOCK / (double) LabelFrame.WIDTH;

  /** The farthest that a point of the worst paper lies beside its place, in modules. */
  private static final double FARTHEST = 1.5;

  private Wear() {}

  /** Every point lies a little beside its place; slopes are lighter or darker. */
  static void wrinkled(Plane paper, double severity, SplittableRandom random) {
    double scale = BLOCK / (3.5 + 3.0 * random.nextDouble());
    Plane right = field(paper, new SmoothNoise(random), scale);
    Plane down = field(paper, new SmoothNoise(random), scale);
    Plane height = field(paper, new SmoothNoise(random), scale / 1.5);
    Plane before = paper.copy();
    double reach = severity * FARTHEST * MODULE;
    for (int y = 0; y < paper.height; y++) {
      for (int x = 0; x < paper.width; x++) {
        int at = y * paper.width + x;
        float value = before.sample(x + reach * right.values[at], y + reach * down.values[at]);
        double slope = height.values[at] - height.sample(x - 6, y - 4);
        double shade = 1 + Math.max(-0.5, Math.min(0.3, 3.5 * severity * slope));
        paper.values[at] = (float) Math.min(0.97, value * shade);
      }
    }
  }

  /** Noise that runs to -1 or 1 somewhere on the printed block. */
  private static Plane field(Plane paper, SmoothNoise noise, double scale) {
    Plane field = new Plane(paper.width, paper.height);
    double most = 0;
    for (int y = 0; y < paper.height; y++) {
      for (int x = 0; x < paper.width; x++) {
        double value = noise.at(x / scale + 5, y / scale + 5) - 0.5;
        field.values[y * paper.width + x] = (float) value;
        boolean printed =
            Math.abs(x - LabelArt.CENTRE_X) < BLOCK / 2.0
                && Math.abs(y - LabelArt.CENTRE_Y) < BLOCK / 2.0;
        most = printed ? Math.max(most, Math.abs(value)) : most;
      }
    }
    for (int at = 0; at < field.values.length; at++) {
      field.values[at] /= (float) most;
    }
    return field;
  }

  /** Dark and translucent in blotches, the ink run, what is on the far side showing through. */
  static void soaked(Plane paper, double severity, SplittableRandom random) {
    Lens.defocus(paper, (0.05 + 0.2 * severity) * MODULE);
    Plane far = paper.copy();
    Lens.defocus(far, 0.4 * MODULE);
    SmoothNoise blotch = new SmoothNoise(random);
    SmoothNoise grain = new SmoothNoise(random);
    double scale = BLOCK / (1.5 + 2 * random.nextDouble());
    double shiftX = BLOCK * (random.nextDouble() - 0.5) * 0.4;
    double shiftY = BLOCK * (random.nextDouble() - 0.5) * 0.4;
    for (int y = 0; y < paper.height; y++) {
      for (int x = 0; x < paper.width; x++) {
        int at = y * paper.width + x;
        double edge = (blotch.at(x / scale, y / scale) - 0.62 + 0.3 * severity) * 16;
        double wet = (0.4 + 0.5 * severity) / (1 + Math.exp(-edge));
        double dull = 0.75 + 0.5 * (grain.at(x / 25.0, y / 25.0) - 0.5);
        float through = far.sample(2 * LabelArt.CENTRE_X - x + shiftX, y + shiftY);
        double under = dull * (0.12 + 0.35 * through);
        paper.values[at] = (float) (paper.values[at] * (1 - wet) + under * wet);
      }
    }
  }

  /** Print that has gone pale in patches, on paper that has gone dark, with light lines. */
  static void thermal(Plane paper, double severity, SplittableRandom random) {
    SmoothNoise fade = new SmoothNoise(random);
    SmoothNoise heat = new SmoothNoise(random);
    boolean upright = random.nextBoolean();
    double[] ink = bands(upright ? paper.width : paper.height, severity, random);
    for (int y = 0; y < paper.height; y++) {
      for (int x = 0; x < paper.width; x++) {
        int at = y * paper.width + x;
        double patch = fade.at(x / (BLOCK / 2.5), y / (BLOCK / 2.5));
        double left = 1 - severity * Math.min(0.95, 0.35 + 1.0 * patch);
        double print = (0.9 - paper.values[at]) * left * ink[upright ? x : y];
        double warm = 0.3 * severity * heat.at(x / (BLOCK / 2.0) + 3, y / (BLOCK / 2.0));
        paper.values[at] = (float) Math.max(0.05, (0.9 - print) * (1 - warm));
      }
    }
  }

  /** How much of the ink each line of the print head gives. */
  private static double[] bands(int lines, double severity, SplittableRandom random) {
    double[] ink = new double[lines];
    double wave = BLOCK / (8 + 12 * random.nextDouble());
    double from = random.nextDouble() * 10;
    for (int at = 0; at < lines; at++) {
      ink[at] = 1 - 0.35 * severity * (1 + Math.sin(2 * Math.PI * at / wave + from)) / 2;
    }
    int missing = 1 + (int) Math.round(7 * severity);
    for (int count = 0; count < missing; count++) {
      int first = random.nextInt(lines);
      int width = 2 + random.nextInt((int) (2 + 10 * severity));
      for (int at = first; at < Math.min(lines, first + width); at++) {
        ink[at] = 0.05;
      }
    }
    return ink;
  }

  /** Letters of a ballpoint, in one to four lines. */
  static void handwriting(Plane paper, double severity, SplittableRandom random) {
    int lines = 1 + (int) Math.round(3 * severity);
    double width = BLOCK * (0.010 + 0.012 * severity);
    Stains.overlay(
        paper,
        0.16f,
        0.9,
        graphics -> {
          graphics.setStroke(
              new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
          for (int line = 0; line < lines; line++) {
            graphics.draw(word(random));
          }
        });
  }

  private static Path2D word(SplittableRandom random) {
    double height = BLOCK * (0.09 + 0.09 * random.nextDouble());
    double y = BLOCK * (0.15 + 0.7 * random.nextDouble());
    double lean = (random.nextDouble() - 0.5) * 0.5;
    Path2D path = new Path2D.Double();
    double x = BLOCK * 0.2 * random.nextDouble();
    path.moveTo(x, y);
    while (x < BLOCK * 0.95) {
      double step = height * (0.4 + 0.5 * random.nextDouble());
      double up = height * (0.5 + random.nextDouble()) * (random.nextBoolean() ? 1 : -0.6);
      double ground = y + lean * (x + step) + height * 0.2 * (random.nextDouble() - 0.5);
      path.curveTo(x + step, ground - up, x - step * 0.4, ground - up, x + step, ground);
      x += step;
    }
    return path;
  }
}
