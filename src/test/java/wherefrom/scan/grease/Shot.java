package wherefrom.scan.grease;

import java.util.SplittableRandom;

/** Puts a label into a picture as the camera sees it, then light, lens, sensor and JPEG. */
final class Shot {
  private static final double METAL = 0.45;

  private Shot() {}

  /** Draws the label over what is there, each pixel the mean of nine rays. */
  static void place(Plane frame, Paper paper, View view) {
    int[] box = box(frame, view);
    double pixelsPerBlock = view.focal() / view.place()[2];
    double texels = LabelArt.BLOCK / pixelsPerBlock / 3;
    int level = Math.max(0, Math.min(4, (int) Math.floor(Math.log(texels) / Math.log(2) + 0.5)));
    Plane reflectance = paper.levels[level];
    Plane cover = paper.cover[level];
    double shrink = 1.0 / (1 << level);
    double[] hit = new double[3];
    Hits hits = new Hits(view, box[0], Math.max(0, box[2] - box[0]));
    for (int y = box[1]; y < box[3]; y++) {
      hits.row(y);
      for (int x = box[0]; x < box[2]; x++) {
        int at = y * frame.width + x;
        float behind = frame.values[at];
        boolean even = hits.even(x);
        if (even) {
          hits.pixel(x);
        }
        if (even && hits.beside(x)) {
          hits.meet(true, x, 1, 1, hit);
          frame.values[at] = (float) bare(behind, view, hit);
          continue;
        }
        if (even && paper.whole && hits.within(x, shrink, reflectance)) {
          frame.values[at] = (float) (hits.lit(shrink, reflectance) / 9);
          continue;
        }
        double sum = 0;
        for (int ray = 0; ray < 9; ray++) {
          boolean met = hits.meet(even, x, ray % 3, ray / 3, hit);
          sum += met ? light(behind, reflectance, cover, paper.whole, shrink, view, hit) : behind;
        }
        frame.values[at] = (float) (sum / 9);
      }
    }
  }

  private static double light(
      double behind,
      Plane reflectance,
      Plane cover,
      boolean whole,
      double shrink,
      View view,
      double[] hit) {
    double tx = hit[0] * LabelArt.BLOCK + LabelArt.CENTRE_X;
    double ty = hit[1] * LabelArt.BLOCK + LabelArt.CENTRE_Y;
    boolean on = tx >= 0 && ty >= 0 && tx < LabelArt.PAPER_WIDTH && ty < LabelArt.PAPER_HEIGHT;
    double share = !on ? 0 : whole ? 1 : cover.sample(tx * shrink - 0.5, ty * shrink - 0.5);
    double bare = share < 1 ? bare(behind, view, hit) : 0;
    if (share <= 0) {
      return bare;
    }
    double value = reflectance.sample(tx * shrink - 0.5, ty * shrink - 0.5);
    double lit = value * lit(hit[2]);
    return share * lit + (1 - share) * bare;
  }

  /** Share of the light that paper sends back, by the cosine between ray and surface. */
  static double lit(double cosine) {
    return 0.55 + 0.45 * Math.max(0, cosine);
  }

  /** The rod's metal, or what lies behind it. */
  private static double bare(double behind, View view, double[] hit) {
    boolean metal =
        view.bend() > 0
            && Math.abs(hit[1] * Math.cos(view.axis()) - hit[0] * Math.sin(view.axis())) < 1.6;
    return metal
        ? METAL * (0.25 + 0.75 * hit[2]) + 0.5 * Math.pow(Math.max(0, hit[2]), 24)
        : behind;
  }

  private static int[] box(Plane frame, View view) {
    double left = frame.width;
    double top = frame.height;
    double right = 0;
    double bottom = 0;
    double edge = Math.max(LabelArt.CENTRE_X, LabelArt.PAPER_HEIGHT / 2.0 + 2) / LabelArt.BLOCK;
    double far = (LabelArt.PAPER_WIDTH - LabelArt.CENTRE_X) / LabelArt.BLOCK;
    double reach = view.bend() > 0 ? 1.7 : edge;
    double limit = view.bend() > 0 ? 1.7 : far;
    for (int step = 0; step < 81; step++) {
      double x = -reach + (limit + reach) * (step % 9) / 8;
      double y = -reach + 2 * reach * (step / 9) / 8;
      double[] at = view.project(x, y);
      left = Math.min(left, at[0]);
      right = Math.max(right, at[0]);
      top = Math.min(top, at[1]);
      bottom = Math.max(bottom, at[1]);
    }
    return new int[] {
      (int) Math.max(0, left - 3), (int) Math.max(0, top - 3),
      (int) Math.min(frame.width, right + 4), (int) Math.min(frame.height, bottom + 4)
    };
  }

  /** Light that falls off to one side; 1 is even. */
  static void shade(Plane frame, double darkest, double towards) {
    double dx = Math.cos(towards);
    double dy = Math.sin(towards);
    double reach = Math.hypot(frame.width, frame.height) / 2;
    for (int y = 0; y < frame.height; y++) {
      for (int x = 0; x < frame.width; x++) {
        double along = ((x - frame.width / 2.0) * dx + (y - frame.height / 2.0) * dy) / reach;
        double share = 0.5 + 0.5 * Math.max(-1, Math.min(1, 2.2 * along));
        frame.values[y * frame.width + x] *= (float) (darkest + (1 - darkest) * share);
      }
    }
  }

  /** The edge of a shadow through a point. */
  static void shadow(Plane frame, double x0, double y0, double depth, double turn, double soft) {
    for (int y = 0; y < frame.height; y++) {
      for (int x = 0; x < frame.width; x++) {
        double from = (x - x0) * Math.cos(turn) + (y - y0) * Math.sin(turn);
        double share = 1 / (1 + Math.exp(-from / soft));
        frame.values[y * frame.width + x] *= (float) (1 - depth * share);
      }
    }
  }

  /** A bright spot that drowns what lies under it. */
  static void glare(Plane frame, double x0, double y0, double radius, double strength) {
    for (int y = 0; y < frame.height; y++) {
      for (int x = 0; x < frame.width; x++) {
        double far = ((x - x0) * (x - x0) + 1.8 * (y - y0) * (y - y0)) / (radius * radius);
        if (far < 9) {
          frame.values[y * frame.width + x] += (float) (strength * Math.exp(-far * 1.2));
        }
      }
    }
  }

  /** Lower contrast: everything moves towards a grey, then the exposure. */
  static void flatten(Plane frame, double contrast, double grey, double exposure) {
    for (int at = 0; at < frame.values.length; at++) {
      frame.values[at] = (float) ((grey + (frame.values[at] - grey) * contrast) * exposure);
    }
  }

  /** Shot and read-out noise, standard deviation in grey values of 255. */
  static void noise(Plane frame, double deviation, SplittableRandom random) {
    for (int at = 0; at < frame.values.length; at++) {
      double level = Math.max(0, Math.min(1, frame.values[at]));
      double share = 0.6 + 0.8 * level;
      double sum =
          random.nextDouble() + random.nextDouble() + random.nextDouble() + random.nextDouble() - 2;
      frame.values[at] = (float) (level + sum * 1.732 * deviation * share / 255);
    }
  }
}
