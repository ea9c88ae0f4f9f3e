package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.ports.Backups;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

class BackupFolderTest {
  private static final Instant TIME = Instant.parse("2026-03-01T12:00:00Z");
  private static final String LOGBOOK = LogFiles.name(1);

  @TempDir Path folder;
  private final Backups backups = new BackupFolder(folder -> true);
  private final Random random = new Random(11);
  private Path job;
  private Path stick;

  @BeforeEach
  void begin() {
    job = folder.resolve("engine");
    stick = folder.resolve("stick");
    JobOpened opened =
        JobOpened.of(
            "engine", 7, ReadyLayouts.all().get(0), PartKind.alwaysOn(), UnitSystem.METRIC);
    try (LogbookFile logbook = LogbookFile.create(job)) {
      Written.append(logbook, TIME, opened);
    }
  }

  private void work(int entries) {
    try (LogbookFile logbook = LogbookFile.open(job)) {
      for (int at = 0; at < entries; at++) {
        Written.append(logbook, TIME, new NoteAdded(1, "step " + random.nextInt()));
      }
    }
  }

  private byte[] original() throws IOException {
    return Files.readAllBytes(job.resolve(LOGBOOK));
  }

  private Path copy() {
    return stick.resolve("engine").resolve(LOGBOOK);
  }

  private void isRefused(Path second, String... words) throws IOException {
    byte[] before = original();
    assertThatThrownBy(() -> backups.copy(job, second))
        .isInstanceOf(IOException.class)
        .hasMessageContainingAll(words)
        .message()
        .matches("(?s).*[.]")
        .doesNotContain("Exception", "null");
    assertThat(original()).isEqualTo(before);
  }

  @Test
  void theCopyGrowsWithTheJob() throws IOException {
    assertThat(backups.copy(job, stick).files()).isEqualTo(1);
    for (int sitting = 0; sitting < 4; sitting++) {
      work(3);
      assertThat(backups.copy(job, stick))
          .isEqualTo(new Backups.Copied(copy().getParent(), 1, 4 + 3 * sitting, List.of(), true));
      assertThat(Files.readAllBytes(copy())).isEqualTo(original());
    }
    assertThat(backups.copy(job, stick).files()).as("nothing new").isZero();
  }

  @Test
  void aLaterStateOfTheJobIsNotWrittenOverAndSaid() throws IOException {
    byte[] early = original();
    work(3);
    backups.copy(job, stick);
    byte[] later = Files.readAllBytes(copy());
    Files.write(job.resolve(LOGBOOK), early);
    isRefused(stick, copy().toString(), "is newer than the job itself", "left as it is");
    assertThat(Files.readAllBytes(copy())).isEqualTo(later);
  }

  @Test
  void anotherStateIsLeftAndSaidWithThePlaceWhereTheyDiffer() throws IOException {
    backups.copy(job, stick);
    byte[] start = original();
    work(2);
    backups.copy(job, stick);
    byte[] one = Files.readAllBytes(copy());
    Files.write(job.resolve(LOGBOOK), start);
    work(4);
    isRefused(stick, copy().toString(), "not an earlier state of this job", "left as it is");
    assertThat(Files.readAllBytes(copy())).isEqualTo(one);
  }

  @Test
  void aFolderInTheJobOrTheJobsOwnIsRefused() throws IOException {
    isRefused(job, "inside the job");
    isRefused(job.resolve("photos").resolve("deep"), "inside the job");
    isRefused(folder, "where the job itself lies");
  }

  @Test
  void aStickThatIsAFileIsSaid() throws IOException {
    Files.writeString(stick, "x");
    isRefused(stick, "could not be written");
  }

  @Test
  void aFolderThatIsNoJobIsSaid() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    assertThatThrownBy(() -> backups.copy(folder.resolve("none"), stick))
        .isInstanceOf(IOException.class);
    assertThatThrownBy(() -> backups.copy(empty, stick)).hasMessageContaining("no job");
    assertThat(stick).doesNotExist();
  }
}
