package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.LogbookCondition;
import wherefrom.job.LogbookException;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.ports.CheckFinding;
import wherefrom.job.shelf.Shelf;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

/** A job that is interrupted while it is begun is none, and its folder can be used again. */
class BeginningTest {
  private static final Instant TIME = Instant.parse("2026-03-01T12:00:00Z");
  private static final Clock CLOCK = Clock.fixed(TIME, ZoneOffset.UTC);

  /** So many jobs are begun before the program is killed. */
  private static final int BEGUN = 25;

  private static final Shelf.NewJob LAUNCH =
      new Shelf.NewJob(
          "Old launch", ReadyLayouts.all().get(0), PartKind.alwaysOn(), UnitSystem.METRIC);

  @TempDir Path shop;
  private FileShelf shelf;
  private Path job;

  @BeforeEach
  void begin() {
    int[] engine = {40};
    shelf = new FileShelf(shop, CLOCK, () -> ++engine[0]);
    job = shop.resolve("old-launch");
  }

  private void canBeBegunByBothWays() {
    try (OpenJob open = shelf.createIn(job, LAUNCH)) {
      assertThat(open.state().name()).isEqualTo("Old launch");
      assertThat(open.folder()).isEqualTo(job);
    }
    try (OpenJob again = shelf.open(job)) {
      assertThat(again.condition()).isInstanceOf(LogbookCondition.Sound.class);
      assertThat(again.history()).hasSize(1);
    }
    assertThat(shelf.list()).singleElement().extracting(Shelf.Entry::trouble).isEqualTo("");
  }

  /** Whatever operation of the disk is the last: then there is a job with an entry, or none. */
  @Test
  void theHeaderAndTheFirstEntryAppearTogether() throws IOException {
    int begun = 0;
    int operations = 0;
    for (boolean over = false; !over; operations++) {
      Path folder = shop.resolve("cut-" + operations);
      MemoryDisk disk = new MemoryDisk(new Random(operations));
      disk.cutPowerAfter(operations);
      boolean confirmed = false;
      try (LogbookFile logbook = LogbookFile.create(folder, disk)) {
        Written.append(logbook, TIME, new NoteAdded(0, "first"));
        confirmed = true;
      } catch (MemoryDisk.PowerCut e) {
        disk.restart();
      }
      FolderScan found = LogScan.of(folder, disk);
      assertThat(found.trouble()).isEmpty();
      assertThat(found.lastNumber() == 0 || found.entries().size() == 1)
          .as("cut after " + operations)
          .isTrue();
      assertThat(!confirmed || found.entries().size() == 1).isTrue();
      begun += found.entries().size();
      over = confirmed;
    }
    assertThat(operations).isGreaterThan(6);
    assertThat(begun).isPositive();
  }

  @Test
  void aFolderWithOnlyALockIsEmpty() throws IOException {
    Files.createDirectory(job);
    Files.createFile(job.resolve(JobLock.FILE));
    Files.createFile(job.resolve(LogFiles.PART));
    assertThat(shelf.list()).isEmpty();
    assertThatThrownBy(() -> shelf.open(job))
        .isInstanceOf(LogbookException.class)
        .hasMessageContaining("There is no job in");
    canBeBegunByBothWays();
  }

  /** As versions before this one left it. */
  @Test
  void aHeaderWithoutAnEntryIsNamedAndItsFolderIsUsedAgain() throws IOException {
    byte[] header = Sums.ended(new LogHeader(LogHeader.VERSION, "", 1).line());
    for (int length = 0; length <= header.length; length += 13) {
      headerOnly(Arrays.copyOf(header, Math.min(length, header.length)));
      assertThat(shelf.list())
          .singleElement()
          .extracting(Shelf.Entry::trouble)
          .asString()
          .contains("No job was started in " + job, "Start it again there");
      assertThatThrownBy(() -> shelf.open(job))
          .isInstanceOf(LogbookException.class)
          .hasMessageContaining("No job was started in " + job);
      assertThat(new FileChecks().check(job))
          .singleElement()
          .extracting(CheckFinding::severity)
          .isEqualTo(CheckFinding.Severity.WARNING);
      canBeBegunByBothWays();
    }
  }

  @Test
  void theWindowUsesTheFolderOfAnInterruptedBeginningAgain() throws IOException {
    headerOnly(Sums.ended(new LogHeader(LogHeader.VERSION, "", 1).line()));
    try (OpenJob open = shelf.create(LAUNCH)) {
      assertThat(open.folder()).isEqualTo(job);
    }
    try (OpenJob second = shelf.create(LAUNCH)) {
      assertThat(second.folder()).isEqualTo(shop.resolve("old-launch-2"));
    }
  }

  private void headerOnly(byte[] bytes) throws IOException {
    if (Files.isDirectory(job)) {
      try (Stream<Path> inside = Files.list(job)) {
        for (Path file : inside.toList()) {
          Files.delete(file);
        }
      }
    }
    Files.createDirectories(job);
    Files.createFile(job.resolve(JobLock.FILE));
    Files.write(job.resolve(LogFiles.name(1)), bytes);
  }

  @Test
  void aFolderWithAJobOrAnythingElseIsLeftAlone() throws IOException {
    shelf.createIn(job, LAUNCH).close();
    assertThatThrownBy(() -> shelf.createIn(job, LAUNCH))
        .hasMessageContaining("holds a job already");
    Path other = Files.createDirectory(shop.resolve("other"));
    Files.writeString(other.resolve("letter.txt"), "mine");
    assertThatThrownBy(() -> shelf.createIn(other, LAUNCH)).hasMessageContaining("is not empty");
    Path damaged = Files.createDirectory(shop.resolve("damaged"));
    Files.writeString(damaged.resolve(LogFiles.name(1)), "junk\njunk\njunk\n");
    assertThatThrownBy(() -> shelf.createIn(damaged, LAUNCH))
        .hasMessageContaining("holds a job already");
    assertThat(damaged.resolve(LogFiles.name(1))).hasContent("junk\njunk\njunk\n");
  }

  /** A real program that begins one job after another, killed: each folder is a job or empty. */
  @Test
  void afterAKillEveryFolderIsAJobOrCanBeBegun() throws Exception {
    Process process = SecondProgram.start(Beginner.class, shop.toString());
    byte[] begun = process.getInputStream().readNBytes(BEGUN);
    assertThat(begun).as("it begins one after the other").hasSize(BEGUN).containsOnly('.');
    process.destroyForcibly().waitFor();
    int jobs = 0;
    try (Stream<Path> folders = Files.list(shop)) {
      for (Path folder : folders.filter(Files::isDirectory).toList()) {
        boolean job = LogFiles.isJob(folder);
        assertThat(job).as(folder.toString()).isNotEqualTo(JobFolder.isFree(folder));
        if (job) {
          shelf.open(folder).close();
          jobs++;
        }
      }
    }
    assertThat(jobs).isGreaterThanOrEqualTo(BEGUN);
  }

  /** Begins jobs until it is killed. */
  static final class Beginner {
    private Beginner() {}

    public static void main(String[] arguments) {
      int[] engine = {0};
      FileShelf shelf = new FileShelf(Path.of(arguments[0]), CLOCK, () -> ++engine[0]);
      while (true) {
        shelf.create(LAUNCH).close();
        System.out.print('.');
        System.out.flush();
      }
    }
  }
}
