package wherefrom.scan.camera;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import wherefrom.parts.LabelFrame;
import wherefrom.parts.TagCode;
import wherefrom.parts.TagSymbol;

/** A film of a bench, frame by frame, on which printed labels come and go. */
public final class BenchFilm {
  private static final int WIDTH = 1280;
  private static final int HEIGHT = 720;
  private static final double MODULE = 5;

  private final List<BufferedImage> frames = new ArrayList<>();

  /** The bare bench, so long that a tag in view before counts as gone. */
  public BenchFilm bare() {
    return bare(12);
  }

  public BenchFilm bare(int count) {
    return add(count, graphics -> {});
  }

  /** A label comes into the picture from the right within ten frames, then lies still. */
  public BenchFilm slidesIn(TagCode tag, int still) {
    for (int step = 1; step <= 10; step++) {
      double x = WIDTH - (WIDTH / 2.0) * step / 10;
      add(1, graphics -> label(graphics, tag, x, HEIGHT / 2.0, 8));
    }
    return lies(tag, still);
  }

  /** A label lies in the middle. */
  public BenchFilm lies(TagCode tag, int count) {
    return add(count, graphics -> label(graphics, tag, WIDTH / 2.0, HEIGHT / 2.0, 8));
  }

  /** Two labels lie side by side. */
  public BenchFilm bothLie(TagCode left, TagCode right, int count) {
    return add(
        count,
        graphics -> {
          label(graphics, left, WIDTH / 4.0, HEIGHT / 2.0, -5);
          label(graphics, right, 3 * WIDTH / 4.0, HEIGHT / 2.0, 11);
        });
  }

  /** Writes the film as Motion JPEG. */
  public Path write(Path file) {
    return ClipMaker.write(file, frames);
  }

  private BenchFilm add(int count, Consumer<Graphics2D> drawing) {
    BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = picture.createGraphics();
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    graphics.setColor(new Color(120, 110, 95));
    graphics.fillRect(0, 0, WIDTH, HEIGHT);
    drawing.accept(graphics);
    graphics.dispose();
    for (int at = 0; at < count; at++) {
      frames.add(picture);
    }
    return this;
  }

  private static void label(
      Graphics2D graphics, TagCode tag, double centreX, double centreY, double degrees) {
    BufferedImage label = label(tag);
    AffineTransform placed = AffineTransform.getTranslateInstance(centreX, centreY);
    placed.rotate(Math.toRadians(degrees));
    placed.translate(-label.getWidth() / 2.0, -label.getHeight() / 2.0);
    graphics.drawImage(label, placed, null);
  }

  private static BufferedImage label(TagCode tag) {
    TagSymbol symbol = TagSymbol.of(tag);
    int side = (int) (LabelFrame.WIDTH * MODULE);
    BufferedImage label = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < side; y++) {
      for (int x = 0; x < side; x++) {
        label.setRGB(x, y, dark(symbol, (int) (y / MODULE), (int) (x / MODULE)) ? 0 : 0xFFFFFF);
      }
    }
    return label;
  }

  private static boolean dark(TagSymbol symbol, int row, int column) {
    int inner = row - LabelFrame.INSET;
    int across = column - LabelFrame.INSET;
    boolean inside = inner >= 0 && across >= 0 && inner < TagSymbol.SIZE && across < TagSymbol.SIZE;
    return LabelFrame.isFrame(row, column) || (inside && symbol.dark(inner, across));
  }
}
