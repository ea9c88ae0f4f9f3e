package wherefrom.scan.grease;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Corner;

/**
 * One damaged label before a camera, of which frames are taken: the same paper and bench, while the
 * hand and the glare wander.
 */
final class GreaseScene {
  private final int width;
  private final int height;
  private final double unit;
  private final double half;
  private final Damage damage;
  private final Paper paper;
  private final Plane bench;
  private final SplittableRandom hand;
  private final double block;
  private final double focal;
  private final double roll;
  private final double tilt;
  private final double towards;
  private final double bend;
  private final double axis;
  private final double x;
  private final double y;
  private final double lightTurn;

  GreaseScene(int width, int height, LabelArt label, Damage damage, long seed) {
    this(width, height, label, damage, seed, height / 720.0);
  }

  /**
   * @param unit size of everything, 1 in a frame of 720 lines as a whole bench is seen; larger
   *     comes nearer
   */
  GreaseScene(int width, int height, LabelArt label, Damage damage, long seed, double unit) {
    this.unit = unit;
    this.width = width;
    this.height = height;
    half = label.half();
    this.damage = damage;
    SplittableRandom random = new SplittableRandom(seed);
    paper = stained(label, damage, random);
    bench = BenchTop.of(width, height, random);
    double plain = 160 + 40 * random.nextDouble();
    block =
        unit
            * (damage.has(Family.SMALL)
                ? plain * 0.86 * Math.pow(0.42, damage.of(Family.SMALL))
                : plain);
    focal = width * (0.75 + 0.25 * random.nextDouble());
    roll = 2 * Math.PI * random.nextDouble();
    tilt =
        Math.toRadians(
            damage.has(Family.TILT) ? 22 + 48 * damage.of(Family.TILT) : 18 * random.nextDouble());
    towards = 2 * Math.PI * random.nextDouble();
    axis = random.nextInt(2) * Math.PI / 2 + 0.2 * (random.nextDouble() - 0.5);
    double radius = 1.3 * Math.pow(0.27 / 1.3, damage.of(Family.ROD));
    bend = damage.has(Family.ROD) ? 1 / radius : 0;
    x = (random.nextDouble() - 0.5) * 0.35 * width;
    y = (random.nextDouble() - 0.5) * 0.3 * height;
    lightTurn = 2 * Math.PI * random.nextDouble();
    hand = random.split();
  }

  /** The label with what befell its paper and print. */
  static Paper stained(LabelArt label, Damage damage, SplittableRandom random) {
    Plane art = label.plane();
    Plane cover = Paper.full();
    if (damage.has(Family.OIL)) {
      Stains.oil(art, damage.of(Family.OIL), random);
    }
    if (damage.has(Family.MARKER)) {
      Stains.marker(art, damage.of(Family.MARKER), random);
    }
    if (damage.has(Family.PAINT)) {
      Stains.paint(art, damage.of(Family.PAINT), random);
    }
    if (damage.has(Family.TORN)) {
      Stains.torn(art, cover, damage.of(Family.TORN), random);
    }
    wear(art, damage, random);
    return new Paper(art, cover);
  }

  private static void wear(Plane art, Damage damage, SplittableRandom random) {
    if (damage.has(Family.THERMAL)) {
      Wear.thermal(art, damage.of(Family.THERMAL), random);
    }
    if (damage.has(Family.HANDWRITING)) {
      Wear.handwriting(art, damage.of(Family.HANDWRITING), random);
    }
    if (damage.has(Family.SOAKED)) {
      Wear.soaked(art, damage.of(Family.SOAKED), random);
    }
    if (damage.has(Family.WRINKLED)) {
      Wear.wrinkled(art, damage.of(Family.WRINKLED), random);
    }
  }

  /** The next frame; each is a little elsewhere. */
  GreaseFrame next(String text) {
    View view = view();
    Plane frame = bench.copy();
    Shot.place(frame, paper, view);
    between(frame, view);
    light(frame, view);
    Between.Shear shear =
        damage.has(Family.ROLLING)
            ? Between.shear(block, height, damage.of(Family.ROLLING), hand)
            : Between.NO_SHEAR;
    Plane seen = focus(shear.of(frame));
    Shot.noise(seen, damage.has(Family.NOISE) ? 6 + 50 * damage.of(Family.NOISE) : 2.5, hand);
    GreyImage image = Lens.jpeg(seen.toGrey(), quality());
    return new GreaseFrame(image, text, corners(view).stream().map(shear::of).toList());
  }

  private double quality() {
    double quality = damage.has(Family.NOISE) ? 0.75 - 0.6 * damage.of(Family.NOISE) : 0.85;
    return damage.has(Family.JPEG)
        ? Math.min(quality, 0.45 - 0.3 * damage.of(Family.JPEG))
        : quality;
  }

  /** What lies between the label and the camera. */
  private void between(Plane frame, View view) {
    double[] centre = view.project(0, 0);
    if (damage.has(Family.FINGER)) {
      Between.finger(frame, centre, block, damage.of(Family.FINGER), hand);
    }
    if (damage.has(Family.BAG)) {
      Between.bag(frame, centre, block, damage.of(Family.BAG), hand);
    }
  }

  private View view() {
    double away = focal / block;
    double[] place = {
      (x + jitter(6 * unit)) * away / focal, (y + jitter(6 * unit)) * away / focal, away
    };
    double[] turned = View.rotation(roll + jitter(0.03), tilt + jitter(0.03), towards);
    return new View(width, height, focal, turned, place, bend, axis);
  }

  private double jitter(double reach) {
    return reach * (hand.nextDouble() + hand.nextDouble() - 1);
  }

  private void light(Plane frame, View view) {
    if (!damage.has(Family.LIGHT)) {
      Shot.shade(frame, 0.85, lightTurn);
      return;
    }
    double severity = damage.of(Family.LIGHT);
    double[] centre = view.project(0, 0);
    double contrast = 1 - 0.7 * severity * hand.nextDouble();
    double exposure = 1 - 0.65 * severity * hand.nextDouble();
    Shot.flatten(frame, contrast, 0.45, exposure);
    Shot.shade(frame, 1 - 0.7 * severity, lightTurn);
    if (hand.nextDouble() < 0.5) {
      Shot.shadow(
          frame,
          centre[0] + jitter(block * 0.4),
          centre[1] + jitter(block * 0.4),
          0.8 * severity,
          lightTurn + 1,
          2 * unit);
    }
    int spots = severity > 0.8 ? 2 : 1;
    for (int count = 0; count < spots; count++) {
      Shot.glare(
          frame,
          centre[0] + jitter(block * 0.6),
          centre[1] + jitter(block * 0.6),
          block * (0.10 + 0.13 * severity),
          0.3 + 0.6 * severity);
    }
  }

  private Plane focus(Plane frame) {
    Plane clipped = frame;
    for (int at = 0; at < clipped.values.length; at++) {
      clipped.values[at] = Math.min(1.15f, clipped.values[at]);
    }
    Lens.defocus(clipped, 0.55 * unit);
    if (damage.has(Family.BLUR)) {
      double severity = damage.of(Family.BLUR);
      if (hand.nextBoolean()) {
        Lens.defocus(clipped, unit * (0.5 + 3.0 * severity));
      } else {
        Lens.motion(clipped, unit * (2 + 12 * severity), 2 * Math.PI * hand.nextDouble());
        Lens.defocus(clipped, unit * 0.8 * severity);
      }
    }
    if (damage.has(Family.MOTION)) {
      double length = unit * (3 + 12 * damage.of(Family.MOTION));
      Lens.motion(clipped, length, 2 * Math.PI * hand.nextDouble());
    }
    return clipped;
  }

  private List<Corner> corners(View view) {
    List<Corner> corners = new ArrayList<>();
    for (int corner = 0; corner < 4; corner++) {
      double cx = corner == 1 || corner == 2 ? -half : half;
      double cy = corner >= 2 ? -half : half;
      double[] at = view.project(cx, cy);
      corners.add(new Corner(at[0], at[1]));
    }
    return corners;
  }
}
