package wherefrom.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.scan.picture.JpegFiles;

class ColourFileTest {
  private static final int WIDTH = 64;
  private static final int HEIGHT = 96;
  private static final Color[][] COLOURS = {
    {Color.RED, Color.GREEN}, {Color.BLUE, new Color(90, 90, 90)}
  };

  private static BufferedImage quarters() {
    BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = picture.createGraphics();
    for (int down = 0; down < 2; down++) {
      for (int across = 0; across < 2; across++) {
        graphics.setColor(COLOURS[down][across]);
        graphics.fillRect(across * WIDTH / 2, down * HEIGHT / 2, WIDTH / 2, HEIGHT / 2);
      }
    }
    graphics.dispose();
    return picture;
  }

  private static BufferedImage read(byte[] file, int longest) throws IOException {
    return ColourFile.read(() -> new ByteArrayInputStream(file), longest);
  }

  private static byte[] png(BufferedImage picture) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(picture, "png", out);
    return out.toByteArray();
  }

  private static void assertNear(Color seen, Color wanted) {
    assertThat(seen.getRed()).isBetween(wanted.getRed() - 12, wanted.getRed() + 12);
    assertThat(seen.getGreen()).isBetween(wanted.getGreen() - 12, wanted.getGreen() + 12);
    assertThat(seen.getBlue()).isBetween(wanted.getBlue() - 12, wanted.getBlue() + 12);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void aPictureStandsUprightHoweverTheCameraWasHeld(int orientation) throws IOException {
    for (int longest : new int[] {HEIGHT, HEIGHT / 2}) {
      BufferedImage seen = read(Corners.jpeg(quarters(), orientation), longest);
      assertThat(seen.getHeight()).isEqualTo(longest);
      assertThat(seen.getWidth()).isEqualTo(longest * WIDTH / HEIGHT);
      for (int down = 0; down < 2; down++) {
        for (int across = 0; across < 2; across++) {
          int x = seen.getWidth() * (1 + 2 * across) / 4;
          int y = seen.getHeight() * (1 + 2 * down) / 4;
          assertNear(new Color(seen.getRGB(x, y)), COLOURS[down][across]);
        }
      }
    }
  }

  @Test
  void aLargePictureIsDecodedSmall() throws IOException {
    BufferedImage large = new BufferedImage(4000, 3000, BufferedImage.TYPE_BYTE_GRAY);
    byte[] file = JpegFiles.of(large);
    BufferedImage seen = read(file, 200);
    assertThat(seen.getWidth()).isEqualTo(200);
    assertThat(seen.getHeight()).isEqualTo(150);
  }

  @Test
  void greyKeepsItsLightAndWhatShinesThroughIsWhite() throws IOException {
    BufferedImage grey = new BufferedImage(4, 4, BufferedImage.TYPE_BYTE_GRAY);
    int[] row = new int[16];
    Arrays.fill(row, 90);
    grey.getRaster().setPixels(0, 0, 4, 4, row);
    assertThat(read(png(grey), 10).getRGB(1, 1)).isEqualTo(new Color(90, 90, 90).getRGB());
    BufferedImage clear = new BufferedImage(4, 4, BufferedImage.TYPE_INT_ARGB);
    assertThat(read(png(clear), 10).getRGB(1, 1)).isEqualTo(Color.WHITE.getRGB());
  }

  @Test
  void whatIsNoPictureIsRefused() {
    byte[] words = "not a picture".getBytes(StandardCharsets.UTF_8);
    assertThatThrownBy(() -> read(words, 10)).isInstanceOf(IOException.class);
  }

  @Test
  void aPngThatIsCutIsRefused() throws IOException {
    byte[] whole = png(quarters());
    byte[] cut = Arrays.copyOf(whole, whole.length / 3);
    assertThatThrownBy(() -> read(cut, 10)).isInstanceOf(IOException.class);
  }
}
