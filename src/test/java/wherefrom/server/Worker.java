package wherefrom.server;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import wherefrom.job.By;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.UnsentException;
import wherefrom.job.change.Planning;
import wherefrom.job.handling.Handling;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.settings.ServerAddress;
import wherefrom.job.takeapart.TakeApart;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

/** A bench that scans without rest, each scan in one of several jobs, drawn from a seed. */
final class Worker implements AutoCloseable {
  /**
   * What was shown as done.
   *
   * @param millis from the scan to its being shown, whatever came between
   */
  record Shown(String job, long sequence, String who, long millis) {
    String line() {
      return job + " " + sequence + " " + who + " " + millis;
    }

    static Shown read(String line) {
      String[] words = line.split(" ");
      return new Shown(words[0], Long.parseLong(words[1]), words[2], Long.parseLong(words[3]));
    }
  }

  /** What a bench had folded of a job when it had scanned all. */
  record Folded(String job, long sequence, String state) {
    static Folded of(String name, OpenJob job) {
      String words =
          job.state().parts()
              + " "
              + job.state().fitted()
              + " "
              + job.state().stops().waiting()
              + " "
              + job.state().standing().size();
      UUID sum = UUID.nameUUIDFromBytes(words.getBytes(StandardCharsets.UTF_8));
      return new Folded(name, job.sequence(), sum.toString());
    }

    String line() {
      return job + " " + sequence + " " + state;
    }

    static Folded read(String line) {
      String[] words = line.split(" ");
      return new Folded(words[0], Long.parseLong(words[1]), words[2]);
    }
  }

  private static final int SOON_MS = 50;

  private final Random random;
  private final By by;
  private final Database database;
  private final List<OpenJob> jobs = new ArrayList<>();
  private final List<String> names;
  private final Path cache;
  private final Consumer<Shown> shown;
  private final Semaphore back = new Semaphore(0);
  private long begunMillis;

  Worker(
      ServerAddress address,
      List<String> names,
      By by,
      long seed,
      Path cache,
      Consumer<Shown> shown) {
    this.random = new Random(seed);
    this.by = by;
    this.names = List.copyOf(names);
    this.cache = cache;
    this.shown = shown;
    this.database = new Database(address, java.util.Map.of());
  }

  /** Scans so many times; each scan that the server is away for is done again until it counts. */
  void work(int scans) {
    open();
    for (int scan = 0; scan < scans; scan++) {
      int at = random.nextInt(jobs.size());
      OpenJob job = jobs.get(at);
      Runnable deed = deed(job);
      begunMillis = System.currentTimeMillis();
      try {
        until(() -> once(job, deed));
      } catch (LogbookException e) {
        if (job.condition().writable()) {
          throw e;
        }
        openAgain(at);
      }
    }
  }

  /** Another program took the bench while the way was cut, as a person would be told. */
  private void openAgain(int at) {
    jobs.get(at).close();
    until(() -> jobs.set(at, open(names.get(at))));
  }

  private void open() {
    while (jobs.size() < names.size()) {
      until(() -> jobs.add(open(names.get(jobs.size()))));
    }
  }

  private OpenJob open(String name) {
    int id = database.ask(connection -> LineRows.findJob(connection, name)).orElseThrow();
    ServerLogbook logbook = ServerLogbook.open(database, id);
    try {
      OpenJob job = OpenJob.in(cache.resolve(name), logbook, Clock.systemUTC(), by);
      job.watch(back::release);
      return job;
    } catch (UnsentException e) {
      logbook.close();
      throw e;
    }
  }

  private void until(Runnable deed) {
    while (true) {
      try {
        deed.run();
        return;
      } catch (UnsentException e) {
        awaitBack();
      }
    }
  }

  /** The jobs tell when the server is back; one that is not open yet is asked for again soon. */
  private void awaitBack() {
    try {
      if (back.tryAcquire(SOON_MS, TimeUnit.MILLISECONDS)) {
        back.drainPermits();
      }
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private void once(OpenJob job, Runnable deed) {
    if (job.isUnsettled()) {
      Optional<LoggedEntry> written = job.settle();
      if (written.isPresent()) {
        show(job, written.get().sequence());
        return;
      }
    }
    long before = job.sequence();
    deed.run();
    LoggedEntry last = job.history().get(job.history().size() - 1);
    if (last.sequence() > before && last.by().who().equals(by.who())) {
      show(job, last.sequence());
    }
  }

  private void show(OpenJob job, long sequence) {
    long millis = System.currentTimeMillis() - begunMillis;
    shown.accept(new Shown(job.folder().getFileName().toString(), sequence, by.who(), millis));
  }

  /** What this bench has folded of each job by now. */
  List<Folded> folded() {
    return IntStream.range(0, names.size())
        .mapToObj(at -> Folded.of(names.get(at), jobs.get(at)))
        .toList();
  }

  private Runnable deed(OpenJob job) {
    List<PartRecord> parts = List.copyOf(job.state().parts());
    PartRecord part = parts.get(random.nextInt(parts.size()));
    PartRecord other = parts.get(random.nextInt(parts.size()));
    int item = part.part().item();
    int kind = random.nextInt(20);
    Handling handling = new Handling(job);
    if (kind < 6) {
      return () -> new TakeApart(job).out(job.state().getPart(item));
    }
    if (kind < 13) {
      boolean astray = random.nextInt(6) == 0 && other.part().kind() == part.part().kind();
      Place place = astray ? other.part().home() : part.part().home();
      return () -> new Fitting(job).fit(job.state().getPart(item).part(), place.spot(), false);
    }
    return switch (kind) {
      case 13 -> () -> handling.offForWashing(item, 1);
      case 14, 15 -> () -> handling.backFromWashing(item);
      case 16 -> () -> handling.tookOut(item, "again");
      case 17 -> () -> handling.lost(item, "");
      case 18 -> () -> handling.found(item);
      default -> () -> new Planning(job).plan(Change.of(ChangeKind.HOT_TANKED));
    };
  }

  /** The bench goes, in order; programs that are killed are the soak's. */
  @Override
  public void close() {
    jobs.forEach(OpenJob::close);
    database.close();
  }
}
