package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.embed.swing.SwingFXUtils;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import wherefrom.job.settings.Appearance;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleWindow;

/**
 * The pictures that README shows are pictures of the window as it is: {@code
 * -Dreadme.pictures=true} makes them anew.
 */
class ReadmePicturesTest {
  private static final Path FOLDER = Path.of("src/site/resources");
  private static final Pattern LINK = Pattern.compile("\\(src/site/resources/([a-z-]+)\\.png\\)");
  private static final String ANEW =
      "mvn test -Dtest=ReadmePicturesTest -Dreadme.pictures=true makes them anew";

  /** A caret, a rounded corner: a word of the smallest letters has more squares than that. */
  private static final int ALLOWED = 3;

  /** Shots of the gallery, in the order of README. */
  private static final List<String> SHOWN =
      List.of(
          "together-stop", "job-home", "print-tags", "take-apart-out", "bench-few", "numbers-plan");

  @Test
  void readmeShowsTheseAndNoOthers() throws IOException {
    Matcher links = LINK.matcher(Files.readString(Path.of("README.md")));
    assertThat(links.results().map(link -> link.group(1))).containsExactlyElementsOf(SHOWN);
  }

  @Test
  void eachIsAPictureOfTheTabletThatTheGalleryMakesToday() throws IOException {
    for (String name : SHOWN) {
      BufferedImage today = draw(name);
      if (Boolean.getBoolean("readme.pictures")) {
        ImageIO.write(today, "png", file(name).toFile());
      }
      BufferedImage shown = ImageIO.read(file(name).toFile());
      assertThat(shown.getWidth()).isEqualTo(Glass.TABLET.width());
      assertThat(shown.getHeight()).isEqualTo(Glass.TABLET.height());
      assertThat(Likeness.differing(shown, today))
          .as("The picture %s has changed: %s", name, ANEW)
          .isLessThanOrEqualTo(ALLOWED);
    }
  }

  @Test
  void aWordThatIsGoneIsNoticedAndAnotherHandAtTheLettersIsNot() throws IOException {
    BufferedImage shown = ImageIO.read(file("job-home").toFile());
    assertThat(Likeness.differing(shown, softened(shown))).isLessThanOrEqualTo(ALLOWED);
    assertThat(Likeness.differing(shown, withoutATitle(shown))).isGreaterThan(ALLOWED);
  }

  /** As letters of a machine that smooths them more. */
  private static BufferedImage softened(BufferedImage picture) {
    float[] near = {0.05f, 0.05f, 0.05f, 0.05f, 0.6f, 0.05f, 0.05f, 0.05f, 0.05f};
    return new ConvolveOp(new Kernel(3, 3, near), ConvolveOp.EDGE_NO_OP, null)
        .filter(rgb(picture), null);
  }

  /** A strip as wide as a short word is filled with the color that stands at its corner. */
  private static BufferedImage withoutATitle(BufferedImage picture) {
    BufferedImage changed = rgb(picture);
    Graphics2D pen = changed.createGraphics();
    int x = picture.getWidth() / 8;
    pen.setColor(new Color(picture.getRGB(x, 4)));
    pen.fillRect(x, 4, picture.getWidth() / 4, 60);
    pen.dispose();
    return changed;
  }

  private static BufferedImage rgb(BufferedImage picture) {
    BufferedImage copy =
        new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = copy.createGraphics();
    pen.drawImage(picture, 0, 0, null);
    pen.dispose();
    return copy;
  }

  private static Path file(String name) {
    return FOLDER.resolve(name + ".png");
  }

  private static BufferedImage draw(String name) {
    Shot shot = Gallery.shot(name);
    SampleWindow window =
        Toolkit.on(
            () -> {
              SampleWindow opened = new SampleWindow(Glass.TABLET, 100, Appearance.LIGHT);
              shot.arrange().accept(opened);
              return opened;
            });
    // A moment later: what was drawn away from the window's thread has come by then.
    return Toolkit.on(
        () -> {
          window.layOut();
          BufferedImage picture = SwingFXUtils.fromFXImage(window.scene.snapshot(null), null);
          window.takeDown();
          return picture;
        });
  }
}
