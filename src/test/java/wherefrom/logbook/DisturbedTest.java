package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.LogbookCondition;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.NoteAdded;

/** A logbook whose files others exchange, lengthen, cut or take away while it is open. */
class DisturbedTest {
  private static final Instant TIME = Instant.parse("2026-03-01T12:00:00Z");

  @TempDir Path shelf;
  private final List<JobEntry> kept = new ArrayList<>();
  private Path job;
  private Path file;
  private LogbookFile logbook;

  @BeforeEach
  void begin() {
    job = shelf.resolve("job");
    file = job.resolve(LogFiles.name(1));
    logbook = LogbookFile.create(job);
    work(3);
  }

  @AfterEach
  void close() {
    logbook.close();
  }

  private void work(int steps) {
    for (int step = 0; step < steps; step++) {
      NoteAdded note = new NoteAdded(kept.size(), "step");
      Written.append(logbook, TIME, note);
      kept.add(note);
    }
  }

  private void isRefused(String... words) {
    assertThatThrownBy(() -> work(1))
        .isInstanceOf(LogbookException.class)
        .hasMessageStartingWith("The step was not kept: ")
        .hasMessageContainingAll(words)
        .message()
        .endsWith(".")
        .doesNotContain("Exception", "null");
  }

  private static List<JobEntry> entries(LogbookFile logbook) {
    return logbook.entries().stream().map(LoggedEntry::entry).toList();
  }

  /** What the folder holds is what was kept, and it is sound. */
  private void everythingIsThere() {
    logbook.close();
    try (LogbookFile again = LogbookFile.open(job)) {
      assertThat(again.condition()).isInstanceOf(LogbookCondition.Sound.class);
      assertThat(entries(again)).isEqualTo(kept);
    }
  }

  private static void copyOverItself(Path file) throws IOException {
    Path copy = Files.copy(file, file.resolveSibling("copy"));
    Files.move(copy, file, StandardCopyOption.ATOMIC_MOVE);
  }

  private static void copyFolder(Path from, Path to) throws IOException {
    Files.createDirectory(to);
    try (Stream<Path> inside = Files.list(from)) {
      for (Path each : inside.toList()) {
        Files.copy(each, to.resolve(each.getFileName()));
      }
    }
  }

  @Test
  void aFileExchangedForItsCopyIsGoneOnWith() throws IOException {
    copyOverItself(file);
    work(2);
    copyOverItself(file);
    work(1);
    everythingIsThere();
  }

  @Test
  void aFolderExchangedForItsCopyIsGoneOnWith() throws IOException {
    Files.move(job, shelf.resolve("old"));
    copyFolder(shelf.resolve("old"), job);
    work(2);
    assertThat(JobLock.tryTake(shelf.resolve("old")).isPresent())
        .as("the old one is free")
        .isTrue();
    everythingIsThere();
  }

  @Test
  void aFolderExchangedForAnEarlierCopyIsRefused() throws IOException {
    copyFolder(job, shelf.resolve("earlier"));
    work(2);
    Files.move(job, shelf.resolve("now"));
    Files.move(shelf.resolve("earlier"), job);
    isRefused("something else took 2 of its steps off the disk", "copy on the USB drive");
    Files.move(job, shelf.resolve("earlier"));
    Files.move(shelf.resolve("now"), job);
    work(1);
    everythingIsThere();
  }

  @Test
  void aWordWrittenBehindTheLastLineIsSteppedAsideFrom() throws IOException {
    Files.writeString(file, "word", StandardOpenOption.APPEND);
    work(1);
    Files.writeString(job.resolve(LogFiles.name(2)), "a line\n", StandardOpenOption.APPEND);
    work(1);
    assertThat(job.resolve(LogFiles.name(3))).exists();
    everythingIsThere();
  }

  @Test
  void aShorterFileIsRefusedAndNothingIsWrittenToIt() throws IOException {
    byte[] whole = Files.readAllBytes(file);
    byte[] cut = java.util.Arrays.copyOf(whole, whole.length - 200);
    Files.write(file, cut);
    isRefused("something else took", "of its steps off the disk");
    isRefused("something else took");
    assertThat(Files.readAllBytes(file)).isEqualTo(cut);
    assertThat(job.resolve(LogFiles.name(2))).doesNotExist();
    Files.write(file, whole);
    work(1);
    everythingIsThere();
  }

  @Test
  void anEmptiedFileIsRefused() throws IOException {
    Files.write(file, new byte[0]);
    isRefused("something else took 3 of its steps off the disk");
    assertThat(file).isEmptyFile();
  }

  @Test
  void aChangedLineBeforeTheLastIsNotBuiltOnWhereItIsSeen() throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    bytes[bytes.length / 2] ^= 4;
    Files.write(shelf.resolve("changed"), bytes);
    Files.move(shelf.resolve("changed"), file, StandardCopyOption.ATOMIC_MOVE);
    isRefused("something else changed logbook-0001.jsonl, line ");
    assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
  }

  @Test
  void anotherHistoryIsRefused() throws IOException {
    Path other = shelf.resolve("other");
    try (LogbookFile stranger = LogbookFile.create(other)) {
      for (int step = 0; step < 3; step++) {
        Written.append(stranger, TIME, new NoteAdded(step, "another"));
      }
    }
    Files.copy(other.resolve(LogFiles.name(1)), file, StandardCopyOption.REPLACE_EXISTING);
    isRefused("something else exchanged its logbook for another");
  }

  @Test
  void aFolderThatIsGoneIsSaidAndGoneOnWithOnceItIsBack() throws IOException {
    Files.move(job, shelf.resolve("away"));
    isRefused("the job's folder " + job + " is not there any more", "Put it back");
    assertThat(job).doesNotExist();
    Files.move(shelf.resolve("away"), job);
    work(2);
    everythingIsThere();
  }

  @Test
  void stepsThatAnotherProgramAddedAreNotWrittenOver() throws IOException {
    Path copy = shelf.resolve("copy");
    copyFolder(job, copy);
    try (LogbookFile other = LogbookFile.open(copy)) {
      Written.append(other, TIME, new NoteAdded(77, "theirs"));
    }
    Files.copy(copy.resolve(LogFiles.name(1)), file, StandardCopyOption.REPLACE_EXISTING);
    byte[] before = Files.readAllBytes(file);
    isRefused("another program has added steps to this job", "open it again");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @Test
  void deletingTheLockFileFreesNothing() throws IOException {
    Files.delete(job.resolve(JobLock.FILE));
    work(1);
    assertThat(job.resolve(JobLock.FILE)).as("taken anew").exists();
    everythingIsThere();
  }

  /** Others disturb it between steps, from a seed: every step is there, or was refused. */
  @Test
  void whateverHappensBetweenStepsNoneThatWasKeptIsLost() throws IOException {
    Random random = new Random(5);
    for (int round = 0; round < 120; round++) {
      switch (random.nextInt(7)) {
        case 0 -> copyOverItself(lastFile());
        case 1 -> Files.writeString(lastFile(), "junk", StandardOpenOption.APPEND);
        case 2 -> Files.writeString(lastFile(), "junk\n", StandardOpenOption.APPEND);
        case 3 -> Files.deleteIfExists(job.resolve(JobLock.FILE));
        case 4 -> cutAndMend(random);
        case 5 -> awayAndBack();
        default -> copyOfTheFolder(round);
      }
      work(1 + random.nextInt(2));
    }
    everythingIsThere();
  }

  private Path lastFile() throws IOException {
    return LogFiles.in(job, new RealDisk()).values().stream().reduce((a, b) -> b).orElseThrow();
  }

  private void cutAndMend(Random random) throws IOException {
    Path last = lastFile();
    byte[] whole = Files.readAllBytes(last);
    byte[] cut = java.util.Arrays.copyOf(whole, random.nextInt(whole.length));
    Files.write(last, cut);
    assertThatThrownBy(() -> Written.append(logbook, TIME, new NoteAdded(0, "no")))
        .isInstanceOf(LogbookException.class);
    assertThat(new String(Files.readAllBytes(last), StandardCharsets.UTF_8))
        .isEqualTo(new String(cut, StandardCharsets.UTF_8));
    Files.write(last, whole);
  }

  private void awayAndBack() throws IOException {
    Files.move(job, shelf.resolve("away"));
    assertThatThrownBy(() -> Written.append(logbook, TIME, new NoteAdded(0, "no")))
        .isInstanceOf(LogbookException.class);
    Files.move(shelf.resolve("away"), job);
  }

  private void copyOfTheFolder(int round) throws IOException {
    Path old = shelf.resolve("old-" + round);
    Files.move(job, old);
    copyFolder(old, job);
  }
}
