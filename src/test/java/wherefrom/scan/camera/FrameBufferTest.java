package wherefrom.scan.camera;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wherefrom.job.image.CameraFrame;

class FrameBufferTest {

  /** ITU-R BT.601-7, 2.5.1, for odd sizes and rows with room behind them too. */
  @ParameterizedTest
  @CsvSource({"16, 9, 64", "7, 5, 28", "7, 5, 32", "1, 1, 4", "3, 4, 64"})
  void greyIsTheLuminanceOfEveryPixel(int width, int height, int stride) {
    SplittableRandom random = new SplittableRandom(5);
    FrameBuffer buffer = new FrameBuffer();
    for (int round = 0; round < 200; round++) {
      byte[] picture = new byte[stride * height];
      for (int at = 0; at < picture.length; at++) {
        int[] likely = {0, 255, random.nextInt(256)};
        picture[at] = (byte) likely[random.nextInt(3)];
      }
      buffer.fill(ByteBuffer.wrap(picture), width, height, stride);
      CameraFrame frame = buffer.frame();
      for (int y = 0; y < height; y++) {
        for (int x = 0; x < width; x++) {
          int at = y * stride + 4 * x;
          double luminance =
              0.114 * (picture[at] & 0xFF)
                  + 0.587 * (picture[at + 1] & 0xFF)
                  + 0.299 * (picture[at + 2] & 0xFF);
          assertThat((double) frame.grey().at(x, y)).isBetween(luminance - 1.5, luminance + 1.5);
          assertThat(frame.bgra()[(y * width + x) * 4 + 2]).isEqualTo(picture[at + 2]);
        }
      }
    }
  }
}
