package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Arrays;
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
    Written.append(logbook, Instant.EPOCH, opening());
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
    Written.append(logbook, Instant.EPOCH, new NoteAdded(1, "ours"));
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
    new JobArchives().export(job, shelf.resolve("job.zip"));
    assertThat(new JobArchives().text(job)).contains("job-opened");
    SecondProgram.writeBehind(file);
    work();
    assertThat(job.resolve(LogFiles.name(2))).as("the first file was left").exists();
    Files.delete(job.resolve(JobLock.FILE));
    assertThat(SecondProgram.on(job, 1)).isEqualTo("reads");
  }

  /** As on a share that gives the lock to both: each looked before the other wrote. */
  @Test
  void twoLinesOfTheSameMomentLeaveAllThatWasBefore() throws IOException {
    work();
    logbook.close();
    byte[] before = Files.readAllBytes(file);
    byte[] ours = grown(before, "ours");
    byte[] theirs = grown(before, "theirs");
    Files.write(file, ours);
    Files.write(
        file, Arrays.copyOfRange(theirs, before.length, theirs.length), StandardOpenOption.APPEND);
    try (LogbookFile both = LogbookFile.open(job)) {
      assertThat(both.condition().writable()).isFalse();
      assertThat(both.condition().sentence())
          .contains("The logbook is damaged at logbook-0001.jsonl, line 5")
          .contains("it is number 3, number 4 is due");
      assertThat(both.entries()).hasSize(3);
      assertThat(both.entries().get(1).entry()).isEqualTo(new NoteAdded(1, "ours"));
    }
  }

  private byte[] grown(byte[] before, String words) throws IOException {
    Files.write(file, before);
    try (LogbookFile one = LogbookFile.open(job)) {
      Written.append(one, Instant.EPOCH, new NoteAdded(2, words));
    }
    return Files.readAllBytes(file);
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
