package wherefrom.scan.grease;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.RadialGradientPaint;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;

/** A work bench with round parts, rods and rubbish on it. */
final class BenchTop {
  private static final int KINDS = 10;
  private static final Map<Long, Plane> MADE = new HashMap<>();

  private BenchTop() {}

  static synchronized Plane of(int width, int height, SplittableRandom random) {
    int kind = random.nextInt(KINDS);
    long key = ((long) width << 32) + (long) height * KINDS + kind;
    return MADE.computeIfAbsent(key, made -> draw(width, height, new SplittableRandom(kind + 77L)))
        .copy();
  }

  private static Plane draw(int width, int height, SplittableRandom random) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    int base = 70 + random.nextInt(110);
    graphics.setColor(grey(base));
    graphics.fillRect(0, 0, width, height);
    double unit = height / 720.0;
    for (int count = 0; count < 60; count++) {
      double x = random.nextDouble() * width;
      double y = random.nextDouble() * height;
      double size = unit * (12 + 70 * random.nextDouble() * random.nextDouble());
      switch (random.nextInt(4)) {
        case 0 -> washer(graphics, x, y, size, random);
        case 1 -> ball(graphics, x, y, size, random);
        case 2 -> rod(graphics, x, y, 6 * size, unit * 10, random);
        default -> block(graphics, x, y, 2 * size, random);
      }
    }
    graphics.dispose();
    Plane plane = Plane.of(image);
    SmoothNoise wood = new SmoothNoise(random);
    SmoothNoise grit = new SmoothNoise(random);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double grain = 0.16 * (wood.at(x / (90 * unit), y / (9 * unit)) - 0.5);
        double dirt = 0.14 * (grit.at(x / (2.5 * unit), y / (2.5 * unit)) - 0.5);
        int at = y * width + x;
        plane.values[at] =
            (float) Math.max(0.02, Math.min(0.98, plane.values[at] * 0.9 + grain + dirt));
      }
    }
    return plane;
  }

  private static Color grey(int level) {
    int value = Math.max(0, Math.min(255, level));
    return new Color(value, value, value);
  }

  private static void washer(
      Graphics2D graphics, double x, double y, double size, SplittableRandom random) {
    int light = 120 + random.nextInt(120);
    int dark = random.nextInt(60);
    double[] rings = {1, 0.72, 0.43};
    int[] levels =
        random.nextBoolean() ? new int[] {dark, light, dark} : new int[] {light, dark, light};
    for (int ring = 0; ring < 3; ring++) {
      double radius = size * rings[ring];
      graphics.setColor(grey(levels[ring]));
      graphics.fill(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
    }
  }

  private static void ball(
      Graphics2D graphics, double x, double y, double size, SplittableRandom random) {
    graphics.setPaint(
        new RadialGradientPaint(
            (float) (x - 0.3 * size),
            (float) (y - 0.3 * size),
            (float) (1.3 * size),
            new float[] {0, 0.25f, 1},
            new Color[] {
              grey(250), grey(140 + random.nextInt(60)), grey(20 + random.nextInt(40))
            }));
    graphics.fill(new Ellipse2D.Double(x - size, y - size, 2 * size, 2 * size));
  }

  private static void rod(
      Graphics2D graphics,
      double x,
      double y,
      double length,
      double thick,
      SplittableRandom random) {
    double turn = random.nextDouble() * Math.PI;
    double ex = x + length * Math.cos(turn);
    double ey = y + length * Math.sin(turn);
    float wide = (float) (thick * (0.5 + 1.5 * random.nextDouble()));
    graphics.setColor(grey(40 + random.nextInt(50)));
    graphics.setStroke(new BasicStroke(wide, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    graphics.draw(new Line2D.Double(x, y, ex, ey));
    graphics.setColor(grey(170 + random.nextInt(70)));
    graphics.setStroke(
        new BasicStroke(wide * 0.35f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    graphics.draw(new Line2D.Double(x, y, ex, ey));
  }

  private static void block(
      Graphics2D graphics, double x, double y, double size, SplittableRandom random) {
    int from = 30 + random.nextInt(200);
    int to = Math.max(10, Math.min(245, from + random.nextInt(120) - 60));
    graphics.setPaint(
        new GradientPaint(
            (float) x, (float) y, grey(from), (float) (x + size), (float) (y + size), grey(to)));
    var old = graphics.getTransform();
    graphics.rotate(random.nextDouble() * Math.PI, x, y);
    graphics.fill(
        new RoundRectangle2D.Double(
            x, y, size, size * (0.3 + random.nextDouble()), size / 6, size / 6));
    graphics.setTransform(old);
  }
}
