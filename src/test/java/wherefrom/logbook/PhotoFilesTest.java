package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is given as a photograph and is none. */
class PhotoFilesTest {
  private final PhotoFiles photos = new PhotoFiles();

  @TempDir Path job;

  /** To read them would free the locks that this program holds on them. */
  @ParameterizedTest
  @ValueSource(strings = {"logbook-0001.jsonl", "logbook.lock"})
  void theJobsOwnLogbookIsNeverRead(String name) throws IOException {
    Path file = Files.writeString(job.resolve(name), "{}");
    assertThatThrownBy(() -> photos.add(job, file)).hasMessageContaining("the job's own logbook");
    Path link = Files.createSymbolicLink(job.resolve("picture.png"), file);
    assertThatThrownBy(() -> photos.add(job, link)).hasMessageContaining("the job's own logbook");
  }

  @Test
  void anyOtherFileIsToldByWhatIsInIt() throws IOException {
    Path folder = Files.createDirectory(job.resolve("elsewhere"));
    Path file = Files.writeString(folder.resolve("logbook-0001.jsonl"), "{}");
    assertThatThrownBy(() -> photos.add(job, file)).hasMessageContaining("not a picture");
    assertThatThrownBy(() -> photos.add(job, job.resolve("none.png")))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("cannot be read");
  }
}
