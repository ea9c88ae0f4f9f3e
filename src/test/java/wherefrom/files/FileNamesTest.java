package wherefrom.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FileNamesTest {
  @ParameterizedTest
  @CsvSource({
    "Launch V8,launch-v8-build-record.pdf",
    "Scheune Öl,scheune-öl-build-record.pdf",
    "Двигатель 1,двигатель-1-build-record.pdf",
    "エンジン,エンジン-build-record.pdf",
    "../../etc/passwd,etc-passwd-build-record.pdf",
    "'a:b*c?\"<>|',a-b-c-build-record.pdf",
    "...,job-build-record.pdf"
  })
  void carryTheJobAndWhatTheFileIs(String job, String name) {
    assertThat(FileNames.of(job, "build record", ".pdf")).isEqualTo(name);
  }

  @Test
  void staysShortEnoughForEveryFileSystem() {
    String name = FileNames.of("\uD842\uDFB7".repeat(5000), "slip visit 12", ".pdf");
    assertThat(name.getBytes(StandardCharsets.UTF_8).length).isLessThan(200);
    assertThat(name).endsWith("-slip-visit-12.pdf").doesNotContain("?");
    assertThat(new String(name.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8))
        .isEqualTo(name);
  }

  @Test
  void besideAFileIsANameThatNothingHas(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("money.csv");
    assertThat(FileNames.beside(file)).isEqualTo(file);
    Files.createFile(file);
    Files.createFile(folder.resolve("money-2.csv"));
    assertThat(FileNames.beside(file)).isEqualTo(folder.resolve("money-3.csv"));
    Path job = Files.createFile(folder.resolve("v8.wherefrom.zip"));
    assertThat(FileNames.beside(job)).isEqualTo(folder.resolve("v8-2.wherefrom.zip"));
  }
}
