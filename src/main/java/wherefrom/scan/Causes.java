package wherefrom.scan;

import java.util.Arrays;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Unread;
import wherefrom.scan.geometry.CameraModel;
import wherefrom.scan.geometry.LabelPattern;
import wherefrom.scan.geometry.PaperShape;
import wherefrom.scan.geometry.Pose;
import wherefrom.scan.geometry.Projection;
import wherefrom.scan.grey.Level;

/**
 * Why a tag that was found could not be read. What hides all else comes first: a tag that is too
 * small or too dark shows neither blur nor dirt.
 */
final class Causes {
  private static final double SMALL = 2.2;
  private static final int DARK = 60;
  private static final int GLARING = 250;

  /** Part of the tag that is drowned in light. */
  private static final double DROWNED = 0.06;

  private static final int SAMPLES = 48;

  /** From the symbol's centre over quiet zone and frame, in modules. */
  private static final double REACH = 14.5;

  /** Steepest step over two pixels, as a part of the contrast, of a sharp picture. */
  private static final double SHARP = 0.46;

  /** Contrast in grey values below which print that has run is not told from blur. */
  private static final int CONTRAST = 110;

  /** Of a module; what pieces of crumpled paper lie beside each other. */
  private static final double UNEVEN = 0.2;

  /** To the right and down, for each of four directions. */
  private static final int[][] STEPS = {{1, 0}, {1, 1}, {0, 1}, {-1, 1}};

  private final GreyImage picture;
  private final int[] xs = new int[SAMPLES * SAMPLES];
  private final int[] ys = new int[SAMPLES * SAMPLES];
  private final int[] sorted = new int[SAMPLES * SAMPLES];

  private Causes(GreyImage picture, Pose pose, CameraModel camera) {
    this.picture = picture;
    Projection projection = new Projection(camera);
    projection.set(pose);
    for (int at = 0; at < xs.length; at++) {
      int row = at / SAMPLES;
      double u = REACH * (2.0 * (at % SAMPLES) / (SAMPLES - 1) - 1);
      double v = REACH * (2.0 * row / (SAMPLES - 1) - 1);
      projection.project(u, v);
      xs[at] = inside(projection.x(), picture.width());
      ys[at] = inside(projection.y(), picture.height());
      sorted[at] = picture.at(xs[at], ys[at]);
    }
    Arrays.sort(sorted);
  }

  /** One pixel from the edge at least; no tag is found on a picture of fewer than three. */
  private static int inside(double place, int size) {
    return (int) Math.max(1, Math.min(size - 2.0, place));
  }

  /** The cause that a person can do most about. */
  static Unread.Cause of(GreyImage picture, Pose pose, LabelPattern pattern, CameraModel camera) {
    if (pose.narrowModule() < SMALL) {
      return Unread.Cause.TOO_SMALL;
    }
    Causes seen = new Causes(picture, pose, camera);
    if (seen.light() < DARK) {
      return Unread.Cause.TOO_DARK;
    }
    if (seen.isGlaring()) {
      return Unread.Cause.GLARE;
    }
    if (seen.isBlurred()) {
      return Unread.Cause.BLURRED;
    }
    PaperShape shape = new PaperShape(pattern, camera);
    boolean uneven = shape.unevenness(new Level(picture, 1), pose) > UNEVEN;
    return uneven ? Unread.Cause.CRUMPLED : Unread.Cause.DIRTY;
  }

  private int dark() {
    return sorted[sorted.length / 50];
  }

  private int light() {
    return sorted[sorted.length * 49 / 50];
  }

  private boolean isGlaring() {
    boolean drowned = sorted[(int) (sorted.length * (1 - DROWNED))] >= GLARING;
    return drowned && dark() < GLARING / 2;
  }

  /** A hand that moves blurs along one direction only, so the softest of them counts. */
  private boolean isBlurred() {
    double contrast = light() - dark();
    int softest = Integer.MAX_VALUE;
    for (int[] step : STEPS) {
      softest = Math.min(softest, steepest(step[0], step[1]));
    }
    return contrast >= CONTRAST && softest < SHARP * contrast;
  }

  private int steepest(int right, int down) {
    int[] steps = new int[xs.length];
    for (int at = 0; at < steps.length; at++) {
      int ahead = picture.at(xs[at] + right, ys[at] + down);
      int behind = picture.at(xs[at] - right, ys[at] - down);
      steps[at] = Math.abs(ahead - behind);
    }
    Arrays.sort(steps);
    return steps[steps.length * 49 / 50];
  }
}
