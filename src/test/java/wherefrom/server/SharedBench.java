package wherefrom.server;

import java.nio.file.Path;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wherefrom.job.By;
import wherefrom.job.OpenJob;
import wherefrom.job.handling.Handling;
import wherefrom.job.settings.ServerAddress;

/** How long a scan takes to the other bench, and what it costs with 1 to 32 benches at one job. */
@Tag("bench")
class SharedBench {
  private static final int SCANS = Integer.getInteger("shared.scans", 320);

  private final ServerAddress address = TestServer.empty();
  private final Database database = new Database(address, Map.of());
  private final int id = ServerTroubleTest.begun(database);

  /** How often scans were judged: each loss is once more. */
  private final AtomicInteger judged = new AtomicInteger();

  /** From a scan to its being written, each loss in between, in nanoseconds. */
  private final Queue<Long> waits = new ConcurrentLinkedQueue<>();

  private OpenJob bench(Database on, int number) {
    By by = new By(number, "");
    return OpenJob.in(Path.of("x"), ServerLogbook.open(on, id), Clock.systemUTC(), by);
  }

  @Test
  void fromScanToTheOtherBench() throws InterruptedException {
    Database far = new Database(address, Map.of());
    OpenJob here = bench(database, 1);
    OpenJob there = bench(far, 2);
    Semaphore heard = new Semaphore(0);
    there.watch(heard::release);
    new Handling(here).note(1, "until the other listens");
    heard.acquire();
    there.catchUp();
    long[] nanos = new long[SCANS];
    for (int scan = 0; scan < SCANS; scan++) {
      long begun = System.nanoTime();
      new Handling(here).note(1, "scan " + scan);
      while (there.sequence() < here.sequence()) {
        heard.tryAcquire(1, TimeUnit.SECONDS);
        there.catchUp();
      }
      nanos[scan] = System.nanoTime() - begun;
    }
    Arrays.sort(nanos);
    System.out.printf(
        "scan to the other bench: median %.1f ms, p95 %.1f ms, most %.1f ms%n",
        nanos[SCANS / 2] / 1e6, nanos[SCANS * 95 / 100] / 1e6, nanos[SCANS - 1] / 1e6);
  }

  @Test
  void costOfAScan() throws Exception {
    double bare = bare();
    System.out.printf("bare insert and commit: %.2f ms%n", bare);
    double one = 0;
    for (int benches : new int[] {1, 1, 2, 4, 8, 16, 32}) {
      judged.set(0);
      waits.clear();
      double cost = cost(benches);
      one = benches == 1 ? cost : one;
      System.out.printf(
          "%d benches: %.2f ms a scan, %.2f of one bench, %.2f of a bare insert, judged %.2f times,"
              + " 95 %% of scans within %.0f ms%n",
          benches,
          cost,
          cost / one,
          cost / bare,
          judged.get() / (double) (SCANS / benches * benches),
          late(waits));
    }
  }

  private double bare() throws SQLException {
    return database.once(
        connection -> {
          try (Statement statement = connection.createStatement()) {
            statement.execute("create table bare (id bigint primary key, line bytea)");
          }
          long begun = 0;
          try (PreparedStatement insert =
              connection.prepareStatement("insert into bare values (?, ?)")) {
            for (int at = -SCANS; at < SCANS; at++) {
              begun = at == 0 ? System.nanoTime() : begun;
              insert.setLong(1, at);
              insert.setBytes(2, new byte[250]);
              insert.executeUpdate();
            }
          }
          return (System.nanoTime() - begun) / 1e6 / SCANS;
        });
  }

  private static double late(Collection<Long> waits) {
    long[] nanos = waits.stream().mapToLong(Long::longValue).sorted().toArray();
    return nanos[nanos.length * 95 / 100] / 1e6;
  }

  /** Milliseconds a scan, all benches together. */
  private double cost(int benches) throws Exception {
    List<Database> databases = new ArrayList<>();
    List<OpenJob> jobs = new ArrayList<>();
    for (int bench = 0; bench < benches; bench++) {
      databases.add(new Database(address, Map.of()));
      jobs.add(bench(databases.get(bench), bench + 1));
    }
    ExecutorService all = Executors.newFixedThreadPool(benches);
    List<Future<?>> done = new ArrayList<>();
    long begun = System.nanoTime();
    for (OpenJob job : jobs) {
      done.add(
          all.submit(
              () -> {
                for (int scan = 0; scan < SCANS / benches; scan++) {
                  long scanned = System.nanoTime();
                  job.inOne(
                      () -> {
                        judged.incrementAndGet();
                        new Handling(job).note(1, "scan");
                      });
                  waits.add(System.nanoTime() - scanned);
                }
              }));
    }
    for (Future<?> each : done) {
      each.get();
    }
    double cost = (System.nanoTime() - begun) / 1e6 / (SCANS / benches * benches);
    jobs.forEach(OpenJob::close);
    databases.forEach(Database::close);
    all.shutdown();
    return cost;
  }
}
