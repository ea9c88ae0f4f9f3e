package wherefrom.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.By;
import wherefrom.job.settings.ServerAddress;

/**
 * Benches that scan at once in the same jobs, while benches come and go, the server is killed and
 * the way to it is cut and slowed: nothing that was shown as done is missing, no number is there
 * twice, and the referee agrees with each step. Programs are killed in {@code SharedSoakTest}.
 */
class SharedWorkTest {
  private static final int BENCHES = 4;
  private static final int SCANS = 60;
  private static final long SEED = 18;

  /** So many scans at most are shown from one trouble to the next. */
  private static final int MOST_BETWEEN = 8;

  @TempDir Path folder;

  @Test
  void nothingThatWasShownAsDoneIsMissing() throws Exception {
    try (Mortal server = new Mortal(folder);
        Crossing crossing = new Crossing(server.port())) {
      ServerAddress through = server.address(crossing.port());
      SharedJobs jobs = SharedJobs.begun(server.address(server.port()), 2);
      List<Worker.Shown> shown = java.util.Collections.synchronizedList(new ArrayList<>());
      Semaphore scanned = new Semaphore(0);
      AtomicInteger scanning = new AtomicInteger(BENCHES);
      ExecutorService benches = Executors.newCachedThreadPool();
      List<Future<?>> all = new ArrayList<>();
      for (int bench = 1; bench <= BENCHES; bench++) {
        By by = new By(bench, "w" + bench);
        long seed = SEED + bench;
        Consumer<Worker.Shown> show = shown::add;
        all.add(
            benches.submit(
                () -> {
                  try {
                    scan(through, jobs.names(), by, seed, show.andThen(one -> scanned.release()));
                  } finally {
                    // First, so that nobody waits for scans of benches that are gone.
                    scanning.decrementAndGet();
                    scanned.release(MOST_BETWEEN);
                  }
                }));
      }
      assertThat(trouble(server, crossing, scanning, scanned))
          .as("rounds of trouble")
          .isGreaterThan(4);
      for (Future<?> each : all) {
        each.get();
      }
      benches.shutdown();
      assertThat(shown).hasSizeGreaterThan(BENCHES * SCANS / 4);
      assertThat(jobs.faults(shown)).isEmpty();
    }
  }

  /** A bench goes after each third of its scans, and another takes its place. */
  private void scan(
      ServerAddress address, List<String> names, By by, long seed, Consumer<Worker.Shown> shown) {
    for (int life = 0; life < 3; life++) {
      try (Worker worker =
          new Worker(address, names, by, seed * 10 + life, folder.resolve("c"), shown)) {
        worker.work(SCANS / 3);
      }
    }
  }

  /**
   * Makes trouble after some scans each time, until all have scanned; the server dies in the fourth
   * round.
   */
  private static int trouble(
      Mortal server, Crossing crossing, AtomicInteger scanning, Semaphore scanned)
      throws Exception {
    Random random = new Random(SEED);
    int round = 0;
    while (scanning.get() > 0) {
      scanned.acquire(1 + random.nextInt(MOST_BETWEEN));
      round++;
      if (round == 4) {
        server.killAndStart();
      } else if (round % 3 == 0) {
        crossing.cut();
      } else {
        crossing.slow(random.nextInt(4));
      }
    }
    return round;
  }
}
