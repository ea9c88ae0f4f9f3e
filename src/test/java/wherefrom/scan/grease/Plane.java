package wherefrom.scan.grease;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import wherefrom.job.image.GreyImage;

/** A picture of reflectances or light, 0 black to 1 white, row by row. */
final class Plane {
  final int width;
  final int height;
  final float[] values;

  Plane(int width, int height) {
    this.width = width;
    this.height = height;
    values = new float[width * height];
  }

  static Plane of(BufferedImage grey) {
    Plane plane = new Plane(grey.getWidth(), grey.getHeight());
    byte[] bytes = ((DataBufferByte) grey.getRaster().getDataBuffer()).getData();
    for (int at = 0; at < plane.values.length; at++) {
      plane.values[at] = (bytes[at] & 0xFF) / 255f;
    }
    return plane;
  }

  Plane copy() {
    Plane copy = new Plane(width, height);
    System.arraycopy(values, 0, copy.values, 0, values.length);
    return copy;
  }

  /** Value between pixel centres; the edge goes on outwards. */
  float sample(double x, double y) {
    return between(
        Math.max(0, Math.min(width - 1.001, x)), Math.max(0, Math.min(height - 1.001, y)));
  }

  /** Whether a point has pixel centres on all sides. */
  boolean holds(double x, double y) {
    return x >= 0 && y >= 0 && x <= width - 1.001 && y <= height - 1.001;
  }

  /** Value at a point that the plane {@link #holds}. */
  float between(double x, double y) {
    int left = (int) x;
    int top = (int) y;
    float fx = (float) (x - left);
    float fy = (float) (y - top);
    int at = top * width + left;
    float upper = values[at] + (values[at + 1] - values[at]) * fx;
    float lower = values[at + width] + (values[at + width + 1] - values[at + width]) * fx;
    return upper + (lower - upper) * fy;
  }

  /** Half the size, each pixel the mean of four. */
  Plane half() {
    Plane half = new Plane(width / 2, height / 2);
    for (int y = 0; y < half.height; y++) {
      for (int x = 0; x < half.width; x++) {
        int at = 2 * y * width + 2 * x;
        half.values[y * half.width + x] =
            (values[at] + values[at + 1] + values[at + width] + values[at + width + 1]) / 4;
      }
    }
    return half;
  }

  GreyImage toGrey() {
    byte[] bytes = new byte[values.length];
    for (int at = 0; at < bytes.length; at++) {
      bytes[at] = (byte) Math.max(0, Math.min(255, Math.round(values[at] * 255)));
    }
    return new GreyImage(width, height, bytes);
  }

  static BufferedImage toBuffered(GreyImage grey) {
    BufferedImage image =
        new BufferedImage(grey.width(), grey.height(), BufferedImage.TYPE_BYTE_GRAY);
    System.arraycopy(
        grey.pixels(),
        0,
        ((DataBufferByte) image.getRaster().getDataBuffer()).getData(),
        0,
        grey.width() * grey.height());
    return image;
  }
}
