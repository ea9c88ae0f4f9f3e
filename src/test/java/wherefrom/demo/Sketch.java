package wherefrom.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Plain drawings that stand in for photographs. */
final class Sketch {
  private static final int WIDTH = 480;
  private static final int HEIGHT = 320;

  private final BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
  private final Graphics2D pen = image.createGraphics();

  private Sketch() {
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setColor(new Color(0xcfc7b4));
    pen.fillRect(0, 0, WIDTH, HEIGHT);
    pen.setStroke(new BasicStroke(3));
  }

  /** A pushrod on a rag, its upper tip dark from wear. */
  static Path wornPushrod(Path folder) throws IOException {
    Sketch sketch = new Sketch();
    sketch.pen.setColor(new Color(0x8d8a80));
    sketch.pen.fillRoundRect(60, 148, 360, 22, 22, 22);
    sketch.pen.setColor(new Color(0x3b2f25));
    sketch.pen.fillOval(396, 144, 32, 32);
    sketch.pen.setColor(Color.BLACK);
    sketch.pen.drawRoundRect(60, 148, 360, 22, 22, 22);
    return sketch.save(folder.resolve("worn-pushrod.png"));
  }

  /** A lifter seen from below: pits on the face. */
  static Path pittedLifter(Path folder) throws IOException {
    Sketch sketch = new Sketch();
    sketch.pen.setColor(new Color(0xa6a39a));
    sketch.pen.fillOval(120, 40, 240, 240);
    sketch.pen.setColor(Color.BLACK);
    sketch.pen.drawOval(120, 40, 240, 240);
    sketch.pen.setColor(new Color(0x4a3226));
    int[][] pits = {{190, 120, 22}, {250, 170, 30}, {220, 200, 16}, {285, 110, 18}};
    for (int[] pit : pits) {
      sketch.pen.fillOval(pit[0], pit[1], pit[2], pit[2]);
    }
    return sketch.save(folder.resolve("pitted-lifter.png"));
  }

  /** The engine as it was found: a block between the ribs of a planked hull, seen from astern. */
  static Path laidUp(Path folder) throws IOException {
    Sketch sketch = new Sketch();
    sketch.pen.setColor(new Color(0x8a5a2b));
    sketch.pen.fillArc(30, -180, 420, 480, 180, 180);
    sketch.pen.setColor(new Color(0xb98a55));
    sketch.pen.fillArc(50, -165, 380, 450, 180, 180);
    sketch.pen.setColor(new Color(0x6d4520));
    for (int plank = 1; plank < 6; plank++) {
      sketch.pen.drawArc(
          50 + 12 * plank, -165 + 11 * plank, 380 - 24 * plank, 450 - 22 * plank, 180, 180);
    }
    sketch.pen.setColor(new Color(0x5b5750));
    sketch.pen.fillRect(170, 100, 140, 90);
    sketch.pen.setColor(Color.BLACK);
    sketch.pen.drawRect(170, 100, 140, 90);
    return sketch.save(folder.resolve("laid-up.png"));
  }

  private Path save(Path file) throws IOException {
    pen.dispose();
    ImageIO.write(image, "png", file.toFile());
    return file;
  }
}
