package wherefrom.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wherefrom.job.settings.Appearance;
import wherefrom.ui.audit.Audit;
import wherefrom.ui.audit.Fault;
import wherefrom.ui.sample.Glass;
import wherefrom.ui.sample.SampleWindow;

/** Opens every screen on pieces of glass, with text sizes and looks, and looks it over. */
class AuditTest {
  private static final Path TARGET = Path.of(System.getProperty("wherefrom.target", "target"));
  private static final Path PICTURES = TARGET.resolve("screens");

  /** A piece of glass, a text size, a look. */
  private record Sight(Glass glass, int percent, Appearance look) {
    @Override
    public String toString() {
      return glass + "-" + percent + (look == Appearance.DARK ? "-dark" : "");
    }
  }

  /**
   * The smallest glass with the largest letters, and the largest glass; with {@code
   * -Daudit.whole=true} all, or those whose names {@code -Daudit.sights=tablet-100|small-.*} fits.
   */
  private static final List<Sight> SIGHTS = sights(System.getProperty("audit.sights", ""));

  private static List<Sight> sights(String wanted) {
    if (!wanted.isEmpty()) {
      return everySight().stream().filter(sight -> sight.toString().matches(wanted)).toList();
    }
    return Boolean.getBoolean("audit.whole")
        ? everySight()
        : List.of(
            new Sight(Glass.SMALL, 200, Appearance.DARK),
            new Sight(Glass.LAPTOP, 100, Appearance.LIGHT));
  }

  private static List<Sight> everySight() {
    List<Sight> sights = new ArrayList<>();
    for (Glass glass : Glass.all()) {
      for (int percent : new int[] {100, 150, 200}) {
        for (Appearance look : List.of(Appearance.LIGHT, Appearance.DARK)) {
          sights.add(new Sight(glass, percent, look));
        }
      }
    }
    return List.copyOf(sights);
  }

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
  void holdsTheRulesOfSizeRoomAndContrastOnEveryGlass(Shot shot) throws IOException {
    Files.createDirectories(PICTURES);
    StringBuilder faults = new StringBuilder();
    for (Sight sight : SIGHTS) {
      String name = shot.name() + "-" + sight;
      for (Fault fault : lookOver(shot, sight, name)) {
        faults.append(name).append(": ").append(fault).append('\n');
      }
    }
    assertThat(faults.toString()).isEmpty();
  }

  private static List<Fault> lookOver(Shot shot, Sight sight, String name) {
    SampleWindow window =
        Toolkit.on(
            () -> {
              SampleWindow opened = new SampleWindow(sight.glass(), sight.percent(), sight.look());
              shot.arrange().accept(opened);
              opened.layOut();
              return opened;
            });
    // What was put off to a later moment, as pictures are, has been done when the next work is.
    return Toolkit.on(() -> lookOver(shot, window, name));
  }

  private static List<Fault> lookOver(Shot shot, SampleWindow window, String name)
      throws IOException {
    assertThat(shot.isUp(window)).as("%s", window.shell.current()).isTrue();
    window.layOut();
    // A number alone says nothing of what it counts.
    assertThat(window.shell.current().aside()).as(name).doesNotMatch("\\d+");
    if (DRAWN) {
      WritableImage picture = window.scene.snapshot(null);
      ImageIO.write(
          SwingFXUtils.fromFXImage(picture, null), "png", PICTURES.resolve(name + ".png").toFile());
    }
    List<Fault> faults = Audit.of(window.scene, window.shell.context().scale());
    window.takeDown();
    return faults;
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
