package wherefrom.scan.grease;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.SplittableRandom;

/** Damage to the paper itself; severity runs from 0 to 1. */
final class Stains {
  private static final int BLOCK = LabelArt.BLOCK;

  /** Where the printed block begins on the paper. */
  private static final double LEFT = LabelArt.CENTRE_X - BLOCK / 2.0;

  private static final double TOP = LabelArt.CENTRE_Y - BLOCK / 2.0;

  /** Paper round the block that tears count from. */
  private static final double EDGE = 8;

  private Stains() {}

  /** Dark oil in patches that let some of the print through, and fingerprints. */
  static void oil(Plane paper, double severity, SplittableRandom random) {
    SmoothNoise noise = new SmoothNoise(random);
    SmoothNoise depth = new SmoothNoise(random);
    double scale = BLOCK / (2.5 + 3 * random.nextDouble());
    double share = 0.18 + 0.35 * severity;
    double thickest = 0.42 + 0.45 * severity;
    double threshold = 0.5 + 0.30 * (0.5 - share) * 2;
    for (int y = 0; y < paper.height; y++) {
      for (int x = 0; x < paper.width; x++) {
        double edge = (noise.at(x / scale, y / scale) - threshold) * 14;
        double film = 1 / (1 + Math.exp(-edge));
        double opacity = film * thickest * (0.7 + 0.3 * depth.at(x / 60.0, y / 60.0));
        int at = y * paper.width + x;
        paper.values[at] = (float) (paper.values[at] * (1 - opacity) + 0.10 * opacity);
      }
    }
    int prints = 1 + (int) (4 * severity);
    for (int count = 0; count < prints; count++) {
      fingerprint(paper, 0.25 + 0.45 * severity, random);
    }
  }

  private static void fingerprint(Plane paper, double strength, SplittableRandom random) {
    SmoothNoise swirl = new SmoothNoise(random);
    double centreX = LEFT + random.nextDouble() * BLOCK;
    double centreY = TOP + random.nextDouble() * BLOCK;
    double turn = random.nextDouble() * Math.PI;
    double length = BLOCK * (0.22 + 0.1 * random.nextDouble());
    double ridge = BLOCK / (50.0 + 25 * random.nextDouble());
    for (int y = 0; y < paper.height; y++) {
      for (int x = 0; x < paper.width; x++) {
        double dx = x - centreX;
        double dy = y - centreY;
        double along = (dx * Math.cos(turn) + dy * Math.sin(turn)) / length;
        double across = (-dx * Math.sin(turn) + dy * Math.cos(turn)) / (0.7 * length);
        double reach = along * along + across * across;
        if (reach < 1) {
          double radius = Math.hypot(dx, 1.4 * dy + 0.3 * length);
          double wave = Math.sin(2 * Math.PI * radius / ridge + 5 * swirl.at(x / 70.0, y / 70.0));
          double opacity = strength * Math.min(1, 3 * (1 - reach)) * (wave > -0.2 ? 1 : 0.25);
          int at = y * paper.width + x;
          paper.values[at] = (float) (paper.values[at] * (1 - opacity) + 0.13 * opacity);
        }
      }
    }
  }

  /** Opaque strokes of a black marker. */
  static void marker(Plane paper, double severity, SplittableRandom random) {
    int strokes = 1 + (int) Math.round(3 * severity);
    double width = BLOCK * (0.018 + 0.030 * severity);
    overlay(
        paper,
        0.05f,
        0.96,
        graphics -> {
          for (int count = 0; count < strokes; count++) {
            graphics.setStroke(
                new BasicStroke(
                    (float) (width * (0.7 + 0.6 * random.nextDouble())),
                    BasicStroke.CAP_ROUND,
                    BasicStroke.JOIN_ROUND));
            graphics.draw(scribble(random));
          }
        });
  }

  private static Path2D scribble(SplittableRandom random) {
    Path2D path = new Path2D.Double();
    path.moveTo(random.nextDouble() * BLOCK, random.nextDouble() * BLOCK);
    path.curveTo(
        random.nextDouble() * BLOCK, random.nextDouble() * BLOCK,
        random.nextDouble() * BLOCK, random.nextDouble() * BLOCK,
        random.nextDouble() * BLOCK, random.nextDouble() * BLOCK);
    return path;
  }

  /** Opaque splashes of white paint. */
  static void paint(Plane paper, double severity, SplittableRandom random) {
    int splashes = 2 + (int) Math.round(7 * severity);
    overlay(
        paper,
        0.88f,
        0.97,
        graphics -> {
          for (int count = 0; count < splashes; count++) {
            double radius =
                BLOCK
                    * (0.02
                        + (0.04 + 0.07 * severity) * random.nextDouble() * random.nextDouble() * 2);
            double x = random.nextDouble() * BLOCK;
            double y = random.nextDouble() * BLOCK;
            for (int drop = 0; drop < 5; drop++) {
              double size = radius * (0.5 + random.nextDouble());
              double cx = x + radius * (random.nextDouble() - 0.5) * 1.6;
              double cy = y + radius * (random.nextDouble() - 0.5) * 1.6;
              graphics.fill(new Ellipse2D.Double(cx - size, cy - size, 2 * size, 2 * size));
            }
          }
        });
  }

  /** Torn off corners and edges, up to three, and creases; takes paper away. */
  static void torn(Plane paper, Plane cover, double severity, SplittableRandom random) {
    int tears = severity < 0.6 ? 1 : 2;
    double depth = BLOCK * (0.14 + 0.14 * severity);
    for (int count = 0; count < tears; count++) {
      tear(cover, random.nextInt(4), depth * (0.75 + 0.5 * random.nextDouble()), random);
    }
    int creases = (int) Math.round(3 * severity);
    for (int count = 0; count < creases; count++) {
      crease(paper, BLOCK * (0.004 + 0.008 * severity), random);
    }
  }

  private static void tear(Plane cover, int corner, double depth, SplittableRandom random) {
    SmoothNoise ragged = new SmoothNoise(random);
    double lean = 0.6 + 0.8 * random.nextDouble();
    for (int y = 0; y < cover.height; y++) {
      for (int x = 0; x < cover.width; x++) {
        double fromX = corner % 2 == 0 ? x - LEFT + EDGE : LEFT + BLOCK - x;
        double fromY = corner / 2 == 0 ? y - TOP + EDGE : TOP + BLOCK + EDGE - y;
        double inside =
            fromX * lean + fromY / lean + depth * 0.5 * (ragged.at(x / 30.0, y / 30.0) - 0.5);
        if (inside < depth * 1.35) {
          cover.values[y * cover.width + x] = 0;
        }
      }
    }
  }

  private static void crease(Plane paper, double shift, SplittableRandom random) {
    Plane before = paper.copy();
    double turn = random.nextDouble() * Math.PI;
    double nx = Math.cos(turn);
    double ny = Math.sin(turn);
    double offset =
        nx * (LEFT + BLOCK * (0.2 + 0.6 * random.nextDouble()))
            + ny * (TOP + BLOCK * (0.2 + 0.6 * random.nextDouble()));
    double bright = random.nextBoolean() ? 0.25 : -0.35;
    for (int y = 0; y < paper.height; y++) {
      for (int x = 0; x < paper.width; x++) {
        double from = x * nx + y * ny - offset;
        double pull = shift * Math.signum(from) * Math.exp(-Math.abs(from) / (BLOCK * 0.12));
        double shade = bright * Math.exp(-from * from / (2 * 16));
        int at = y * paper.width + x;
        float value = before.sample(x + pull * nx, y + pull * ny);
        paper.values[at] = (float) Math.max(0.03, Math.min(0.97, value + shade));
      }
    }
  }

  /** Strokes and shapes, in pixels from the corner of the printed block. */
  interface Drawing {
    void on(Graphics2D graphics);
  }

  /** Lays a drawing of one grey over the paper. */
  static void overlay(Plane paper, float colour, double opacity, Drawing drawing) {
    BufferedImage mask = new BufferedImage(paper.width, paper.height, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D graphics = mask.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setColor(Color.WHITE);
    graphics.translate(LEFT, TOP);
    drawing.on(graphics);
    graphics.dispose();
    Plane covered = Plane.of(mask);
    for (int at = 0; at < paper.values.length; at++) {
      double share = opacity * covered.values[at];
      paper.values[at] = (float) (paper.values[at] * (1 - share) + colour * share);
    }
  }
}
