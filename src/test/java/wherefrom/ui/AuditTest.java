package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.ui.audit.Audit;
import wherefrom.ui.audit.Fault;
import wherefrom.ui.sample.SampleWindow;

/** Opens every screen at two screen densities and three text sizes and looks it over. */
class AuditTest {
  private static final Path TARGET = Path.of(System.getProperty("wherefrom.target", "target"));
  private static final Path PICTURES = TARGET.resolve("screens");

  /** The smallest and the largest text; with {@code -Daudit.whole=true} what lies between, too. */
  private static final int[] TEXT_SIZES =
      Boolean.getBoolean("audit.whole") ? new int[] {100, 150, 200} : new int[] {100, 200};

  /** Pictures of them all, to be looked at, are made with {@code -Daudit.pictures=true}. */
  private static final boolean DRAWN = Boolean.getBoolean("audit.pictures");

  /** All of them, or those whose names begin as {@code -Dshots=part,money} says. */
  static List<Shot> shots() {
    String[] wanted = System.getProperty("shots", "").split(",", -1);
    return Gallery.all().stream()
        .filter(shot -> Stream.of(wanted).anyMatch(shot.name()::startsWith))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("shots")
  void holdsTheRulesOfSizeRoomAndContrastAtEveryDensityAndTextSize(Shot shot) throws IOException {
    Files.createDirectories(PICTURES);
    StringBuilder faults = new StringBuilder();
    for (int dpi : new int[] {96, 160}) {
      for (int percent : TEXT_SIZES) {
        String name = shot.name() + "-" + dpi + "-" + percent;
        for (Fault fault : lookOver(shot, dpi, percent, name)) {
          faults.append(name).append(": ").append(fault).append('\n');
        }
      }
    }
    assertThat(faults.toString()).isEmpty();
  }

  private static List<Fault> lookOver(Shot shot, int dpi, int percent, String name) {
    SampleWindow window =
        Toolkit.on(
            () -> {
              SampleWindow opened = new SampleWindow(dpi, percent);
              shot.arrange().accept(opened);
              return opened;
            });
    // What was put off to a later moment has been done when the next work is.
    return Toolkit.on(() -> lookOver(shot, window, name));
  }

  private static List<Fault> lookOver(Shot shot, SampleWindow window, String name)
      throws IOException {
    assertThat(window.shell.current()).isInstanceOf(shot.screen());
    window.layOut();
    if (DRAWN) {
      WritableImage picture = window.scene.snapshot(null);
      ImageIO.write(
          SwingFXUtils.fromFXImage(picture, null), "png", PICTURES.resolve(name + ".png").toFile());
    }
    return Audit.of(window.scene, window.shell.desk().scale());
  }

  @Test
  void everyScreenOnTheClassPathIsInTheGallery() throws IOException {
    Path classes = TARGET.resolve("classes/wherefrom/ui");
    try (Stream<Path> files = Files.walk(classes)) {
      List<String> found =
          files
              .map(file -> file.getFileName().toString())
              .filter(file -> file.matches("\\w+Screen\\.class") && !file.equals("Screen.class"))
              .map(file -> file.replace(".class", ""))
              .toList();
      assertThat(found).isNotEmpty();
      assertThat(
              Gallery.all().stream()
                  .map(shot -> shot.screen().getSimpleName())
                  .collect(Collectors.toSet()))
          .containsAll(found);
    }
  }
}
