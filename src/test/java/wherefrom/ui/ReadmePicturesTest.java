package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
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
 * The pictures that README shows are pictures of the window: {@code -Dreadme.pictures=true} makes
 * them anew.
 */
class ReadmePicturesTest {
  private static final Path FOLDER = Path.of("src/site/resources");
  private static final Pattern LINK = Pattern.compile("\\(src/site/resources/([a-z-]+)\\.png\\)");

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
  void eachIsAPictureOfTheTabletThatTheGalleryMakes() throws IOException {
    if (Boolean.getBoolean("readme.pictures")) {
      for (String name : SHOWN) {
        draw(name);
      }
    }
    for (String name : SHOWN) {
      assertThat(Gallery.all()).extracting(Shot::name).contains(name);
      BufferedImage picture = ImageIO.read(FOLDER.resolve(name + ".png").toFile());
      assertThat(picture.getWidth()).isEqualTo(Glass.TABLET.width());
      assertThat(picture.getHeight()).isEqualTo(Glass.TABLET.height());
    }
  }

  private static void draw(String name) throws IOException {
    Shot shot = Gallery.all().stream().filter(one -> one.name().equals(name)).findFirst().get();
    SampleWindow window =
        Toolkit.on(
            () -> {
              SampleWindow opened = new SampleWindow(Glass.TABLET, 100, Appearance.LIGHT);
              shot.arrange().accept(opened);
              return opened;
            });
    BufferedImage picture =
        Toolkit.on(
            () -> {
              window.layOut();
              return SwingFXUtils.fromFXImage(window.scene.snapshot(null), null);
            });
    ImageIO.write(picture, "png", FOLDER.resolve(name + ".png").toFile());
  }
}
