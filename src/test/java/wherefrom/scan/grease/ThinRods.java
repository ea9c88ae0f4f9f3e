package wherefrom.scan.grease;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import wherefrom.job.reader.Corner;
import wherefrom.parts.SymbolLayout;
import wherefrom.parts.TagCode;

/**
 * Labels that go far round a thin rod, and how much of each is to be seen: the symbol goes 130 to
 * 160 degrees round, and the rod may be turned so that one side is out of sight.
 */
final class ThinRods {
  /** How far the symbol goes round, in degrees. */
  static final int[] WRAPS = {130, 140, 150, 160};

  /** How far the tag is turned about the rod, in degrees. */
  static final int[] TURNS = {0, 12, 24, 36, 48};

  /** A module that is seen more sideways than so is not shown, in degrees from straight on. */
  private static final double SIDEWAYS = 80;

  private ThinRods() {}

  /**
   * A frame.
   *
   * @param shown part of the symbol's modules that can be seen, 0 to 1
   */
  record Wrapped(GreaseFrame frame, double shown) {}

  static Wrapped of(int wrap, int turn, int seed, int height, List<TagCode> issued) {
    SplittableRandom random =
        new SplittableRandom((wrap * 100L + turn) * 1_000_003L + seed * 7919L + height);
    TagCode code = issued.get(random.nextInt(issued.size()));
    int width = height * 16 / 9;
    double unit = height / 720.0;
    Plane frame = BenchTop.of(width, height, random);
    LabelArt label = LabelArt.of(code);
    View view = view(width, height, 2 * label.half() / Math.toRadians(wrap), turn, random);
    Shot.place(frame, GreaseScene.stained(label, Damage.none(), random), view);
    Shot.shade(frame, 0.85, 2 * Math.PI * random.nextDouble());
    Lens.defocus(frame, 0.55 * unit);
    Shot.noise(frame, 2.5, random);
    GreaseFrame seen =
        new GreaseFrame(
            Lens.jpeg(frame.toGrey(), 0.85), code.digits(), corners(view, label.half()));
    return new Wrapped(seen, shown(view, label.half()));
  }

  private static View view(
      int width, int height, double radius, int turn, SplittableRandom random) {
    double block = height / 720.0 * (160 + 40 * random.nextDouble());
    double focal = width * (0.75 + 0.25 * random.nextDouble());
    double roll = 2 * Math.PI * random.nextDouble();
    double axis = random.nextInt(2) * Math.PI / 2 + 0.2 * (random.nextDouble() - 0.5);
    double tilt = Math.toRadians(turn) * (random.nextBoolean() ? 1 : -1);
    double[] place = {
      (random.nextDouble() - 0.5) * 0.35 * width / block,
      (random.nextDouble() - 0.5) * 0.3 * height / block,
      focal / block
    };
    double[] turned = View.rotation(roll, tilt, roll + axis + Math.PI / 2);
    return new View(width, height, focal, turned, place, 1 / radius, axis);
  }

  private static List<Corner> corners(View view, double half) {
    List<Corner> corners = new ArrayList<>();
    for (int corner = 0; corner < 4; corner++) {
      double x = corner == 1 || corner == 2 ? -half : half;
      double[] at = view.project(x, corner >= 2 ? -half : half);
      corners.add(new Corner(at[0], at[1]));
    }
    return corners;
  }

  /** Inside the picture, on the near side, and not too much from the side. */
  private static double shown(View view, double half) {
    int size = SymbolLayout.SIZE;
    double module = 2 * half / size;
    double[] hit = new double[3];
    int shown = 0;
    for (int at = 0; at < size * size; at++) {
      int row = at / size;
      double x = (at % size + 0.5) * module - half;
      double y = (row + 0.5) * module - half;
      double[] seen = view.project(x, y);
      boolean inside =
          seen[0] >= 0 && seen[1] >= 0 && seen[0] < view.width() && seen[1] < view.height();
      boolean near =
          view.meet(seen[0], seen[1], hit) && Math.hypot(hit[0] - x, hit[1] - y) < module / 2;
      shown += inside && near && hit[2] > Math.cos(Math.toRadians(SIDEWAYS)) ? 1 : 0;
    }
    return shown / (double) (size * size);
  }
}
