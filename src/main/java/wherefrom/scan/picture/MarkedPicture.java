package wherefrom.scan.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Stroke;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import wherefrom.files.Outgoing;
import wherefrom.job.image.GreyImage;
import wherefrom.job.reader.Corner;
import wherefrom.job.tray.PictureMark;

/** A picture in greys with outlines and words on it. */
final class MarkedPicture {
  private static final Color READ = new Color(0x56, 0xB4, 0xE9);
  private static final Color UNREAD = new Color(0x8B, 0, 0);

  private MarkedPicture() {}

  static void save(GreyImage picture, List<PictureMark> marks, Outgoing png) throws IOException {
    BufferedImage drawn = draw(picture, marks);
    png.write(out -> ImageIO.write(drawn, "png", out));
  }

  private static BufferedImage draw(GreyImage picture, List<PictureMark> marks) {
    BufferedImage drawn =
        new BufferedImage(picture.width(), picture.height(), BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < picture.height(); y++) {
      for (int x = 0; x < picture.width(); x++) {
        drawn.setRGB(x, y, picture.at(x, y) * 0x010101);
      }
    }
    Graphics2D graphics = drawn.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    float unit = Math.max(1, Math.max(picture.width(), picture.height()) / 1000f);
    graphics.setFont(new Font(Font.SANS_SERIF, Font.BOLD, Math.round(14 * unit)));
    marks.stream()
        .filter(mark -> !mark.outline().isEmpty())
        .forEach(mark -> draw(graphics, mark, unit));
    graphics.dispose();
    return drawn;
  }

  private static void draw(Graphics2D graphics, PictureMark mark, float unit) {
    Path2D outline = new Path2D.Double();
    Corner first = mark.outline().get(0);
    outline.moveTo(first.x(), first.y());
    mark.outline().forEach(corner -> outline.lineTo(corner.x(), corner.y()));
    outline.closePath();
    graphics.setStroke(new BasicStroke(5 * unit));
    graphics.setColor(Color.WHITE);
    graphics.draw(outline);
    graphics.setStroke(line(mark, unit));
    graphics.setColor(mark.read() ? READ : UNREAD);
    graphics.draw(outline);
    if (!mark.words().isEmpty()) {
      Rectangle2D box = graphics.getFontMetrics().getStringBounds(mark.words(), graphics);
      float x = (float) outline.getBounds2D().getX();
      float y = (float) (outline.getBounds2D().getMaxY() + box.getHeight());
      graphics.setColor(Color.WHITE);
      graphics.fill(
          new Rectangle2D.Double(x, y + box.getY(), box.getWidth() + 2 * unit, box.getHeight()));
      graphics.setColor(Color.BLACK);
      graphics.drawString(mark.words(), x + unit, y);
    }
  }

  private static Stroke line(PictureMark mark, float unit) {
    return mark.read()
        ? new BasicStroke(3 * unit)
        : new BasicStroke(
            3 * unit,
            BasicStroke.CAP_BUTT,
            BasicStroke.JOIN_MITER,
            10,
            new float[] {8 * unit, 5 * unit},
            0);
  }
}
