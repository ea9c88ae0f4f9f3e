package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Clock;
import java.util.Locale;
import java.util.zip.CRC32C;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.OpenJob;

/** A shop of 1,000 jobs of 1,000 entries, and a job of 1,000,000; processor time, not the clock. */
@Tag("bench")
class GrowthBench {
  private static final int JOBS = 1000;
  private static final int ENTRIES = 1000;
  private static final int MANY = 1_000_000;
  private static final int ROUNDS = 10;

  @TempDir Path folder;

  /** Of the whole program, compiler and collector included, in milliseconds. */
  private static long processor() {
    OperatingSystemMXBean system =
        (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    return system.getProcessCpuTime() / 1_000_000;
  }

  private static long thread() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1_000_000;
  }

  private static void say(String words, Object... figures) {
    System.out.printf(Locale.ROOT, words + "%n", figures);
  }

  @Test
  void aShopOfAThousandJobsIsListedAndAForeignTagNamed() throws IOException {
    BigJobs big = new BigJobs();
    for (int job = 0; job < JOBS; job++) {
      big.write(folder.resolve("job-" + job), "Job " + job, 1000 + job, ENTRIES);
    }
    FileShelf shelf = new FileShelf(folder, Clock.systemUTC(), () -> 1);
    long begun = processor();
    assertThat(shelf.list()).hasSize(JOBS);
    long first = processor() - begun;
    begun = processor();
    assertThat(shelf.list()).hasSize(JOBS);
    long again = processor() - begun;
    say(
        "list of %d jobs: %d ms anew, %d ms with indexes, ratio %.3f",
        JOBS, first, again, (double) again / first);
    begun = processor();
    assertThat(shelf.find(1000)).contains("Job 0");
    long once = processor() - begun;
    begun = processor();
    assertThat(shelf.find(1000 + JOBS - 1)).contains("Job " + (JOBS - 1));
    long named = processor() - begun;
    begun = processor();
    assertThat(shelf.find(1)).isEmpty();
    long none = processor() - begun;
    say("foreign tag: named in %d ms (the first one in %d), of no job: %d ms", named, once, none);
    assertThat(again).isLessThanOrEqualTo(2000);
    assertThat(named).isLessThanOrEqualTo(100);
  }

  @Test
  void aJobOfAMillionEntriesOpensInLittleMoreThanItsReading() throws IOException {
    new BigJobs().write(folder, "Long", 7, MANY);
    long leastReading = Long.MAX_VALUE;
    long leastOpening = Long.MAX_VALUE;
    for (int round = 0; round < ROUNDS; round++) {
      long begun = thread();
      assertThat(read(folder.resolve(LogFiles.name(1)))).isEqualTo(MANY + 1);
      long reading = thread() - begun;
      begun = thread();
      try (OpenJob job = new OpenJob(LogbookFile.open(folder), Clock.systemUTC())) {
        assertThat(job.sequence()).isEqualTo(MANY);
      }
      long opening = thread() - begun;
      say("%d entries: read in %d ms, opened in %d ms", MANY, reading, opening);
      leastReading = Math.min(leastReading, reading);
      leastOpening = Math.min(leastOpening, opening);
    }
    // The least of each: a ratio of one round is as chance has it where others use the machine.
    double ratio = (double) leastOpening / leastReading;
    say("least: read in %d ms, opened in %d ms, ratio %.2f", leastReading, leastOpening, ratio);
    assertThat(ratio).isLessThanOrEqualTo(1.5);
  }

  /** Reads, sums and parses each line as JSON, and nothing else. */
  private static int read(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    MessageDigest digest = Sums.sha256();
    int lines = 0;
    int from = 0;
    for (int at = 0; at < bytes.length; at++) {
      if (bytes[at] == '\n') {
        CRC32C crc = new CRC32C();
        crc.update(bytes, from, at - from);
        digest.update(bytes, from, at - from);
        boolean summed = crc.getValue() != 0 && !Sums.chain(digest).isEmpty();
        boolean parsed = EntryCodec.MAPPER.readTree(bytes, from, at - from).size() > 0;
        lines += summed && parsed ? 1 : 0;
        from = at + 1;
      }
    }
    return lines;
  }
}
