package wherefrom.scan.grease;

import java.util.List;
import java.util.SplittableRandom;
import wherefrom.job.image.GreyImage;
import wherefrom.parts.LabelFrame;
import wherefrom.parts.TagCode;

/** One photograph of twelve megapixels with many tags on a tray, four pixels for each module. */
final class GreaseTray {
  static final int WIDTH = 4000;
  static final int HEIGHT = 3000;
  private static final double MODULE = 4;

  private GreaseTray() {}

  /**
   * Tags in rows, each lightly oiled, turned a little, the whole tray seen a little from a side.
   */
  static GreyImage photograph(List<TagCode> codes, int columns, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Plane frame = BenchTop.of(WIDTH, HEIGHT, random);
    double focal = 0.85 * WIDTH;
    double block = MODULE * LabelFrame.WIDTH;
    double away = focal / block;
    double tilt = Math.toRadians(8 * random.nextDouble());
    double towards = 2 * Math.PI * random.nextDouble();
    int rows = (codes.size() + columns - 1) / columns;
    for (int at = 0; at < codes.size(); at++) {
      double x = ((at % columns + 0.35) / columns - 0.5) * WIDTH * 0.95;
      double y = ((at / columns + 0.5) / rows - 0.5) * HEIGHT * 0.95;
      double[] place = {x / block, y / block, away};
      double roll = 0.3 * (random.nextDouble() - 0.5);
      View view = new View(WIDTH, HEIGHT, focal, View.rotation(roll, tilt, towards), place, 0, 0);
      Shot.place(frame, paper(codes.get(at), random), view);
    }
    Shot.shade(frame, 0.6, towards);
    Lens.defocus(frame, 0.7);
    Shot.noise(frame, 3, random);
    return Lens.jpeg(frame.toGrey(), 0.85);
  }

  private static Paper paper(TagCode code, SplittableRandom random) {
    Plane art = LabelArt.of(code).plane();
    Stains.oil(art, 0.3 * random.nextDouble(), random);
    return new Paper(art, Paper.full());
  }
}
