package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.LogbookException;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.NoteAdded;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

/** Two real programs at one job: at no time do both write. */
class TwoProgramsTest {
  @TempDir Path shelf;
  private Path job;
  private Path file;
  private LogbookFile logbook;

  @BeforeEach
  void begin() {
    job = shelf.resolve("job");
    file = job.resolve(LogFiles.name(1));
    logbook = LogbookFile.create(job);
    logbook.append(Instant.EPOCH, opening());
  }

  @AfterEach
  void close() {
    logbook.close();
  }

  private static JobOpened opening() {
    return JobOpened.of(
        "engine", 7, ReadyLayouts.all().get(0), PartKind.alwaysOn(), UnitSystem.METRIC);
  }

  private void work() {
    logbook.append(Instant.EPOCH, new NoteAdded(1, "ours"));
  }

  @Test
  void theSecondReadsUntilTheFirstHasClosed() throws IOException {
    assertThat(SecondProgram.on(job, 1)).isEqualTo("reads");
    logbook.close();
    assertThat(SecondProgram.on(job, 1)).isEqualTo("writes");
  }

  @Test
  void deletingTheLockFileDoesNotLetTheSecondWrite() throws IOException {
    Files.delete(job.resolve(JobLock.FILE));
    assertThat(SecondProgram.on(job, 1)).isEqualTo("reads");
    work();
    assertThat(SecondProgram.on(job, 1)).isEqualTo("reads");
  }

  /** On POSIX systems closing any channel to a locked file frees the lock. */
  @Test
  void readingTheJobInTheSameProgramDoesNotFreeTheLock() throws Exception {
    LogbookFile.read(job).close();
    new FileChecks().check(job);
    new BackupFolder().copy(job, Files.createDirectory(shelf.resolve("stick")));
    SecondProgram.writeBehind(file);
    work();
    assertThat(job.resolve(LogFiles.name(2))).as("the first file was left").exists();
    Files.delete(job.resolve(JobLock.FILE));
    assertThat(SecondProgram.on(job, 1)).isEqualTo("reads");
  }

  /** With both files exchanged no lock is left: then the first one notices and stops. */
  @Test
  void whereNoLockIsLeftTheFirstStopsOnceTheSecondHasWritten() throws IOException {
    Files.delete(job.resolve(JobLock.FILE));
    Files.copy(file, shelf.resolve("copy"));
    Files.move(shelf.resolve("copy"), file, StandardCopyOption.ATOMIC_MOVE);
    assertThat(SecondProgram.on(job, 2)).isEqualTo("writes");
    assertThatThrownBy(this::work)
        .isInstanceOf(LogbookException.class)
        .hasMessageContaining("another program has added steps to this job");
    logbook.close();
    try (LogbookFile again = LogbookFile.open(job)) {
      assertThat(again.condition().writable()).isTrue();
      assertThat(again.entries()).hasSize(3);
    }
  }
}
