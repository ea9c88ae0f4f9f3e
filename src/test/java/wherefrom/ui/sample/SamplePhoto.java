package wherefrom.ui.sample;

import java.io.IOException;
import java.nio.file.Path;
import wherefrom.job.image.ColourImage;

/** A drawn photograph: upright where its name begins with tall, none where it begins with gone. */
final class SamplePhoto {
  private SamplePhoto() {}

  static ColourImage load(Path file, int longest) throws IOException {
    String name = String.valueOf(file.getFileName());
    if (name.startsWith("gone")) {
      throw new IOException(file + " is not there.");
    }
    boolean tall = name.startsWith("tall");
    int width = tall ? longest * 3 / 4 : longest;
    int height = tall ? longest : longest * 3 / 4;
    int[] pixels = new int[width * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double away = Math.hypot(x - width / 2.0, y - height / 2.0) / longest;
        int light = 90 + 130 * y / height;
        int steel = away < 0.25 ? light / 2 : light;
        pixels[y * width + x] = steel << 16 | (steel - 8) << 8 | (steel - 20);
      }
    }
    return new ColourImage(width, height, pixels);
  }
}
