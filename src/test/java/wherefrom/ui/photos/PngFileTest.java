package wherefrom.ui.photos;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.image.CameraFrame;
import wherefrom.job.image.GreyImage;

/** Read back by the platform's own PNG reader. */
class PngFileTest {
  @Test
  void everyPixelComesBackAsTheCameraGaveIt(@TempDir Path folder) throws Exception {
    int width = 37;
    int height = 23;
    byte[] bgra = new byte[4 * width * height];
    new SplittableRandom(5).nextBytes(bgra);
    Path file = folder.resolve("still.png");
    PngFile.write(
        new CameraFrame(new GreyImage(width, height, new byte[width * height]), bgra), file);
    BufferedImage read = ImageIO.read(file.toFile());
    assertThat(read.getWidth()).isEqualTo(width);
    assertThat(read.getHeight()).isEqualTo(height);
    for (int at = 0; at < width * height; at++) {
      int expected =
          (bgra[4 * at + 2] & 0xff) << 16 | (bgra[4 * at + 1] & 0xff) << 8 | bgra[4 * at] & 0xff;
      assertThat(read.getRGB(at % width, at / width) & 0xffffff).isEqualTo(expected);
    }
  }
}
