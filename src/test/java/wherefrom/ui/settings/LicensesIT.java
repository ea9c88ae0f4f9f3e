package wherefrom.ui.settings;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The finished jar brings the terms of everything that is in it. */
class LicensesIT {
  private static final Path JAR =
      Path.of(System.getProperty("wherefrom.target", "target"), "wherefrom.jar");

  /** Group and artifact of what was built by Maven. */
  private static final Pattern PART =
      Pattern.compile("META-INF/maven/([^/]+)/([^/]+)/pom.properties");

  private ZipFile jar;

  @BeforeEach
  void open() throws IOException {
    jar = new ZipFile(JAR.toFile());
  }

  @AfterEach
  void close() throws IOException {
    jar.close();
  }

  private String text(String file) throws IOException {
    try (InputStream in =
        jar.getInputStream(Objects.requireNonNull(jar.getEntry(file.substring(1)), file))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void everyTextOfAboutIsThere() throws IOException {
    for (LicenseText license : LicenseText.ALL) {
      assertThat(text(license.file())).as(license.title()).hasSizeGreaterThan(400);
    }
  }

  @Test
  void everyLibraryIsListedWithItsTerms() throws IOException {
    assertThat(text("/wherefrom/licenses/THIRD-PARTY.txt"))
        .contains("javafx-graphics", "ffmpeg", "javacpp", "javacv", "pdfbox", "fontbox")
        .contains("jackson-databind", "com.google.zxing:core", "metadata-extractor", "xmpcore")
        .contains("hipparchus-core", "commons-logging", "jspecify", "picocli", "fastcsv")
        .doesNotContain("Unknown license");
  }

  /** The jar itself says what went into it. */
  @Test
  void nothingIsInItThatTheListsDoNotName() throws IOException {
    List<String> parts =
        jar.stream()
            .map(entry -> PART.matcher(entry.getName()))
            .filter(Matcher::matches)
            .map(part -> part.group(1) + ":" + part.group(2))
            .filter(part -> !part.equals("wherefrom:wherefrom"))
            .toList();
    assertThat(parts).hasSizeGreaterThan(8);
    JsonNode bill = new ObjectMapper().readTree(text("/wherefrom/licenses/SBOM.json"));
    List<String> billed = new ArrayList<>();
    bill.path("components")
        .forEach(
            each -> billed.add(each.path("group").asText() + ":" + each.path("name").asText()));
    assertThat(text("/wherefrom/licenses/THIRD-PARTY.txt")).contains(parts);
    assertThat(billed).containsAll(parts);
  }

  @Test
  void theBillOfMaterialsNamesThemWithTheirVersions() throws IOException {
    JsonNode bill = new ObjectMapper().readTree(text("/wherefrom/licenses/SBOM.json"));
    assertThat(bill.path("bomFormat").asText()).isEqualTo("CycloneDX");
    assertThat(bill.path("components").findValuesAsText("name"))
        .contains("ffmpeg", "javafx-graphics", "pdfbox", "jackson-databind")
        .doesNotContain("junit-jupiter");
  }

  @Test
  void nothingIsInItThatOnlyAProgramOfFfmpegWouldNeed() {
    assertThat(jar.stream().map(entry -> entry.getName()))
        .noneMatch(name -> name.matches("org/bytedeco/ffmpeg/.*/(ffmpeg|ffprobe).*"));
  }
}
