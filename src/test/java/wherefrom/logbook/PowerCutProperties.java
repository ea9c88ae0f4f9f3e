package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.NoteAdded;

/**
 * Writes entries on a disk that fails and loses power at any moment. Whatever happens, every entry
 * that was confirmed is there in order; at most the one that was being written is there besides.
 */
class PowerCutProperties {
  private static final int SEEDS = 600;
  private static final int HISTORY = 500;
  private static final int MOST_CUTS = 10_000;
  private static final Instant TIME = Instant.parse("2026-03-01T12:00:00.123456789Z");

  private int powerCuts;
  private int failures;
  private int voided;

  @Test
  void whatWasConfirmedIsThereAfterPowerCuts(@TempDir Path folder) {
    for (int seed = 0; seed < SEEDS; seed++) {
      life(folder, new Random(seed), 0, "seed " + seed);
    }
    assertThat(powerCuts).isGreaterThan(SEEDS);
    assertThat(failures).isZero();
  }

  @Test
  void whatWasConfirmedIsThereAfterFailedWritesAndPowerCuts(@TempDir Path folder) {
    for (int seed = 0; seed < SEEDS; seed++) {
      life(folder, new Random(seed), 0.15, "seed " + seed);
    }
    assertThat(powerCuts).isGreaterThan(SEEDS);
    assertThat(failures).isGreaterThan(SEEDS);
    assertThat(voided).as("failed entries that reached the disk all the same").isPositive();
  }

  /** 500 entries, and the power goes in the middle of each write, force and renaming. */
  @Test
  void whatWasConfirmedIsThereWhereverALongHistoryIsCut(@TempDir Path folder) {
    MemoryDisk disk = new MemoryDisk(new Random(1));
    List<JobEntry> confirmed = new ArrayList<>();
    int[] cuts = {0};
    disk.atEachOperation(
        () -> {
          FolderScan found = scan(folder, disk.afterPowerCut(new Random(cuts[0]++)));
          assertThat(found.trouble()).as("cut " + cuts[0]).isEmpty();
          List<JobEntry> entries = found.entries().stream().map(LoggedEntry::entry).toList();
          assertThat(entries.size() - confirmed.size()).as("cut " + cuts[0]).isBetween(0, 1);
          assertThat(entries.subList(0, confirmed.size())).isEqualTo(confirmed);
        });
    try (LogbookFile logbook = LogbookFile.create(folder, disk)) {
      for (int step = 0; step < HISTORY; step++) {
        NoteAdded entry = new NoteAdded(step, "word ".repeat(step % 40));
        Written.append(logbook, TIME, entry);
        confirmed.add(entry);
      }
    }
    assertThat(cuts[0]).isGreaterThan(2 * HISTORY);
  }

  @Test
  @Tag("soak")
  void tenThousandCuts(@TempDir Path folder) {
    for (int seed = SEEDS; powerCuts < MOST_CUTS; seed++) {
      life(folder, new Random(seed), seed % 2 == 0 ? 0 : 0.15, "seed " + seed);
    }
    System.out.printf(
        Locale.ROOT,
        "%d power cuts, %d failed writes, %d failed entries on disk all the same%n",
        powerCuts,
        failures,
        voided);
    assertThat(failures).isGreaterThan(SEEDS);
  }

  private void life(Path folder, Random random, double failing, String seed) {
    MemoryDisk disk = new MemoryDisk(random);
    List<JobEntry> confirmed = new ArrayList<>();
    begin(folder, disk, confirmed);
    for (int sitting = 0; sitting < 5; sitting++) {
      List<JobEntry> pending = sitting(folder, disk, random, failing, confirmed);
      disk.restart();
      List<JobEntry> found = reopen(folder, disk, seed);
      assertThat(found).as(seed).startsWith(confirmed.toArray(JobEntry[]::new));
      List<JobEntry> more = found.subList(confirmed.size(), found.size());
      if (!more.isEmpty()) {
        assertThat(more).as(seed).hasSize(1);
        assertThat(pending).as(seed).containsAll(more);
        confirmed.addAll(more);
      }
    }
  }

  private static void begin(Path folder, MemoryDisk disk, List<JobEntry> confirmed) {
    try (LogbookFile logbook = LogbookFile.create(folder, disk)) {
      NoteAdded first = new NoteAdded(0, "first");
      Written.append(logbook, TIME, first);
      confirmed.add(first);
    }
  }

  /**
   * Works until the power goes. Of the entries since the last confirmed one, those that the person
   * was not told surely do not count: one of them may be there all the same.
   */
  private List<JobEntry> sitting(
      Path folder, MemoryDisk disk, Random random, double failing, List<JobEntry> confirmed) {
    List<JobEntry> pending = new ArrayList<>();
    try (LogbookFile logbook = LogbookFile.open(folder, disk)) {
      disk.fail(failing);
      disk.cutPowerAfter(random.nextInt(60));
      for (int step = 0; step < 100; step++) {
        NoteAdded entry = new NoteAdded(step, "word ".repeat(random.nextInt(300)));
        pending.add(entry);
        try {
          Written.append(logbook, TIME, entry);
          confirmed.add(entry);
          pending.clear();
        } catch (LogbookException e) {
          failures++;
          if (String.valueOf(e.getMessage()).contains("It does not count")) {
            pending.clear();
          }
        }
      }
    } catch (MemoryDisk.PowerCut e) {
      powerCuts++;
    }
    return pending;
  }

  private List<JobEntry> reopen(Path folder, MemoryDisk disk, String seed) {
    try (LogbookFile logbook = LogbookFile.open(folder, disk)) {
      assertThat(logbook.condition().writable())
          .as(seed + ": " + logbook.condition().sentence())
          .isTrue();
      voided += scan(folder, disk).voided();
      return logbook.entries().stream().map(LoggedEntry::entry).toList();
    }
  }

  private static FolderScan scan(Path folder, MemoryDisk disk) {
    try {
      return LogScan.of(folder, disk);
    } catch (java.io.IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
