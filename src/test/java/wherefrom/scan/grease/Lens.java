package wherefrom.scan.grease;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import wherefrom.job.image.GreyImage;

/** Blur of lens and hand, and the camera's JPEG. */
final class Lens {
  private Lens() {}

  /** Out of focus: three box means, which come near a Gauss bell of this deviation in pixels. */
  static void defocus(Plane frame, double deviation) {
    if (deviation < 0.2) {
      return;
    }
    for (int pass = 0; pass < 3; pass++) {
      box(frame, deviation, true);
      box(frame, deviation, false);
    }
  }

  /** A box whose variance is a third of the whole, with part weights at its ends. */
  private static void box(Plane frame, double deviation, boolean across) {
    double half = (Math.sqrt(4 * deviation * deviation + 1) - 1) / 2;
    int whole = (int) half;
    float part = (float) (half - whole);
    float weight = 1 / (2 * whole + 1 + 2 * part);
    int lines = across ? frame.height : frame.width;
    int length = across ? frame.width : frame.height;
    int step = across ? 1 : frame.width;
    int ends = whole + 1;
    float[] line = new float[length + 2 * ends];
    for (int number = 0; number < lines; number++) {
      int start = across ? number * frame.width : number;
      for (int at = 0; at < length; at++) {
        line[ends + at] = frame.values[start + at * step];
      }
      Arrays.fill(line, 0, ends, line[ends]);
      Arrays.fill(line, ends + length, line.length, line[ends + length - 1]);
      double sum = 0;
      for (int at = 1; at < ends + whole + 1; at++) {
        sum += line[at];
      }
      for (int at = 0; at < length; at++) {
        float outer = line[at] + line[at + 2 * ends];
        frame.values[start + at * step] = (float) ((sum + part * outer) * weight);
        sum += line[at + 2 * ends] - line[at + 1];
      }
    }
  }

  /** Moved while the shutter was open. */
  static void motion(Plane frame, double length, double turn) {
    Plane before = frame.copy();
    int steps = Math.max(2, (int) Math.ceil(length * 1.5));
    double dx = Math.cos(turn) * length / steps;
    double dy = Math.sin(turn) * length / steps;
    for (int y = 0; y < frame.height; y++) {
      for (int x = 0; x < frame.width; x++) {
        float sum = 0;
        for (int step = 0; step < steps; step++) {
          double along = step - (steps - 1) / 2.0;
          sum += before.sample(x + along * dx, y + along * dy);
        }
        frame.values[y * frame.width + x] = sum / steps;
      }
    }
  }

  /** Through the camera's JPEG and back. */
  static GreyImage jpeg(GreyImage grey, double quality) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    try (ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality((float) quality);
      writer.setOutput(out);
      writer.write(null, new IIOImage(Plane.toBuffered(grey), null, null), how);
      out.flush();
      BufferedImage back = ImageIO.read(new ByteArrayInputStream(bytes.toByteArray()));
      return Plane.of(back).toGrey();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    } finally {
      writer.dispose();
    }
  }
}
