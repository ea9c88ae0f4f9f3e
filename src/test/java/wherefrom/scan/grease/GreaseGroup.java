package wherefrom.scan.grease;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import wherefrom.job.image.GreyImage;
import wherefrom.parts.TagCode;

/** A picture with several tags in rows, each damaged in its own way and as badly as it happens. */
final class GreaseGroup {
  private static final List<Family> DAMAGES =
      List.of(
          Family.OIL,
          Family.SMALL,
          Family.TILT,
          Family.ROD,
          Family.TORN,
          Family.MARKER,
          Family.PAINT,
          Family.WRINKLED,
          Family.SOAKED,
          Family.THERMAL,
          Family.HANDWRITING);

  /** Of the height of a tag's share of the picture, what symbol and frame take. */
  private static final double BLOCK = 0.42;

  private final Plane frame;
  private final SplittableRandom random;
  private final double focal;
  private final double light;

  private GreaseGroup(int height, long seed) {
    random = new SplittableRandom(seed);
    int width = height * 16 / 9;
    frame = BenchTop.of(width, height, random);
    focal = width * (0.75 + 0.25 * random.nextDouble());
    light = 2 * Math.PI * random.nextDouble();
  }

  /**
   * Tags at some of the places of a square of them.
   *
   * @param side how many places lie along a side
   * @param height of the picture in pixels, 16 by 9
   */
  static GreyImage photograph(List<TagCode> codes, int side, int height, long seed) {
    GreaseGroup group = new GreaseGroup(height, seed);
    List<Integer> places = new ArrayList<>(IntStream.range(0, side * side).boxed().toList());
    for (TagCode code : codes) {
      int place = places.remove(group.random.nextInt(places.size()));
      double x = (place % side + 0.5) / side - 0.5;
      int row = place / side;
      group.lay(code, x, (row + 0.5) / side - 0.5, BLOCK * height / side);
    }
    return group.seen(height / 720.0);
  }

  /** At a share of the picture's width and height from its middle, so many pixels large. */
  private void lay(TagCode code, double x, double y, double size) {
    Family family = DAMAGES.get(random.nextInt(DAMAGES.size()));
    Damage damage = Damage.of(family, 1 + random.nextInt(Family.GRADES), random);
    LabelArt label = LabelArt.of(code);
    double block = family == Family.SMALL ? size * (1 - 0.5 * damage.of(family)) : size;
    double away = focal / block;
    double[] place = {x * frame.width / block, y * frame.height / block, away};
    double tilt = Math.toRadians(family == Family.TILT ? 20 + 40 * damage.of(family) : 10);
    double towards = 2 * Math.PI * random.nextDouble();
    double[] turned = View.rotation(2 * Math.PI * random.nextDouble(), tilt, towards);
    double bend = family == Family.ROD ? 1 / (1.3 - damage.of(family)) : 0;
    View view = new View(frame.width, frame.height, focal, turned, place, bend, 0);
    Shot.place(frame, GreaseScene.stained(label, damage, random), view);
  }

  private GreyImage seen(double unit) {
    Shot.shade(frame, 0.7, light);
    Lens.defocus(frame, 0.7 * unit);
    Shot.noise(frame, 4, random);
    return Lens.jpeg(frame.toGrey(), 0.8);
  }
}
