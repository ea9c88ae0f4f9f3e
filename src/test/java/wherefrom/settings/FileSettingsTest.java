package wherefrom.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.job.Settings;
import wherefrom.quantity.UnitSystem;

class FileSettingsTest {
  @TempDir Path home;
  private final Path shop = Path.of("shop");
  private Path file;

  @BeforeEach
  void nameTheFile() {
    file = home.resolve("settings.json");
  }

  private FileSettings settings() {
    return new FileSettings(home, shop);
  }

  @Test
  void withoutAFileTheSettingsAreFreshAndNothingIsWritten() {
    assertThat(settings().load()).isEqualTo(Settings.fresh(shop));
    assertThat(file).doesNotExist();
  }

  @Test
  void everySettingComesBackAsItWasKept() throws IOException {
    Settings kept =
        new Settings(
            Path.of("/a shop/ü"),
            UnitSystem.METRIC,
            150,
            3.78,
            false,
            new Settings.Scanner("]Q1", "#", "à&é\"'(-è_ç"),
            "v4l2:x",
            true,
            Optional.of(Path.of("/stick/ü")),
            Map.of(
                "/a shop/ü/engine", new Settings.Copy(Instant.parse("2026-05-04T09:30:00Z"), 128)));
    settings().save(kept);
    assertThat(settings().load()).isEqualTo(kept);
  }

  @Test
  void theFolderIsMadeWhereItIsMissing() throws IOException {
    FileSettings deep = new FileSettings(home.resolve("a/b"), shop);
    deep.save(Settings.fresh(shop).withTextPercent(200));
    assertThat(deep.load().textPercent()).isEqualTo(200);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "{",
        "[]",
        "7",
        "{\"units\":\"furlong\"}",
        "{\"textPercent\":130}",
        "{\"pixelsPerMm\":-1}",
        "{\"sound\":\"loud\"}",
        "{\"cameraOn\":1}",
        "{\"secondCopy\":false}",
        "{\"copied\":7}",
        "{\"copied\":{\"engine\":\"yesterday\"}}",
        "{\"shop\":7}"
      })
  void aDamagedFileIsKeptAsideAndTheSettingsAreFresh(String content) throws IOException {
    Files.writeString(file, content);
    assertThat(settings().load()).isEqualTo(Settings.fresh(shop));
    assertThat(file).doesNotExist();
    assertThat(home.resolve("settings-damaged-1.json")).hasContent(content);
  }

  @Test
  void aSecondDamagedFileDoesNotReplaceTheFirst() throws IOException {
    Files.writeString(file, "first");
    settings().load();
    Files.writeString(file, "second");
    settings().load();
    assertThat(home.resolve("settings-damaged-1.json")).hasContent("first");
    assertThat(home.resolve("settings-damaged-2.json")).hasContent("second");
  }

  @Test
  void unknownFieldsArePassedOverAndMissingOnesAreFresh() throws IOException {
    Files.writeString(file, "{\"textPercent\":200,\"tomorrow\":{\"x\":1}}");
    assertThat(settings().load()).isEqualTo(Settings.fresh(shop).withTextPercent(200));
  }

  @Test
  void whatCannotBeKeptIsSaidInASentence() throws IOException {
    Path blocked = Files.writeString(home.resolve("blocked"), "a file");
    assertThatThrownBy(() -> new FileSettings(blocked, shop).save(Settings.fresh(shop)))
        .isInstanceOf(IOException.class)
        .hasMessageStartingWith("The settings cannot be kept in ")
        .hasMessageEndingWith(".");
  }
}
