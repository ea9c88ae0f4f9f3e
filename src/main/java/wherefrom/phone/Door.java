package wherefrom.phone;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import wherefrom.job.phone.PhoneDoor;
import wherefrom.job.phone.PhoneHost;

/** A server at one address, for one job. It ends when it is closed, or when nobody uses it. */
final class Door implements PhoneDoor {
  private static final int THREADS = 100;
  private static final int WAITING = 100;
  private static final int TICK_SECONDS = 5;
  private static final Duration IDLE = Duration.ofSeconds(10);

  private final HttpServer server;
  private final String address;
  private final PhoneHost host;
  private final Limits limits;
  private final LongSupplier nanos;
  private final Invitations invitations;
  private final Sessions sessions;
  private final ScheduledExecutorService timer =
      Executors.newSingleThreadScheduledExecutor(daemon("wherefrom-phones-timer"));
  private final ExecutorService workers = workers(daemon("wherefrom-phones"), IDLE);
  private final AtomicBoolean open = new AtomicBoolean(true);
  private volatile long used;
  private List<Joined> told = List.of();

  /**
   * @param at where it listens; port 0 for any that is free
   * @throws IOException when it cannot listen there
   */
  @SuppressWarnings("FutureReturnValueIgnored") // the ticking ends with the timer
  Door(
      InetSocketAddress at,
      PhoneHost host,
      Limits limits,
      LongSupplier nanos,
      Consumer<byte[]> random)
      throws IOException {
    this.server = HttpServer.create(at, 0);
    this.address = at.getAddress().getHostAddress() + ":" + server.getAddress().getPort();
    this.host = host;
    this.limits = limits;
    this.nanos = nanos;
    this.invitations = new Invitations(limits, nanos, random);
    this.sessions = new Sessions(limits);
    this.used = nanos.getAsLong();
    invitations.fresh();
    server.setExecutor(workers);
    server.createContext(
        "/",
        new Requests(
            new Gate(address),
            limits,
            new Entrance(host, invitations, sessions, nanos, random),
            new PhoneActions(host),
            sessions,
            new Deadlines(timer, nanos, limits),
            this::left));
    server.start();
    timer.scheduleWithFixedDelay(this::tick, TICK_SECONDS, TICK_SECONDS, TimeUnit.SECONDS);
  }

  /**
   * Threads for requests.
   *
   * @param idle one that has had nothing to do for so long ends
   */
  static ExecutorService workers(ThreadFactory threads, Duration idle) {
    ThreadPoolExecutor workers =
        new ThreadPoolExecutor(
            THREADS,
            THREADS,
            idle.toMillis(),
            TimeUnit.MILLISECONDS,
            new LinkedBlockingQueue<>(WAITING),
            threads,
            // What nobody takes is closed by the server when its time is up.
            new ThreadPoolExecutor.DiscardPolicy());
    workers.allowCoreThreadTimeOut(true);
    return workers;
  }

  private static ThreadFactory daemon(String name) {
    return work -> {
      Thread thread = new Thread(work, name);
      thread.setDaemon(true);
      return thread;
    };
  }

  /** A phone has gone by itself: there is room for another. */
  private void left() {
    if (invitations.current().isEmpty()) {
      invitations.renew();
    }
    host.changed();
  }

  /** Old keys are replaced, unused doors closed; who looks on is told what is new. */
  void tick() {
    List<Joined> now = joined();
    if (now.stream().anyMatch(Joined::near)) {
      used = nanos.getAsLong();
    }
    boolean old = invitations.isOld() && !sessions.isFull() && invitations.renew();
    if (nanos.getAsLong() - used > limits.unused().toNanos()) {
      close();
    } else if (old || !now.equals(told)) {
      host.changed();
    }
    told = now;
  }

  @Override
  public String address() {
    return "http://" + address;
  }

  @Override
  public Optional<Invitation> invitation() {
    return invitations
        .current()
        .filter(key -> open.get())
        .map(
            key -> {
              String link = address() + "/#" + key.words();
              return new Invitation(link, JoinSymbol.of(link), key.number());
            });
  }

  @Override
  public void invite() {
    if (!sessions.isFull()) {
      invitations.fresh();
    }
    host.changed();
  }

  @Override
  public List<Joined> joined() {
    return sessions.list(nanos.getAsLong());
  }

  @Override
  public void putOut(int number) {
    if (sessions.remove(number)) {
      left();
    }
  }

  @Override
  public boolean isOpen() {
    return open.get();
  }

  /**
   * Nothing more is taken, and nothing more is written. Who writes just now is not interrupted: an
   * interrupt would close the file under every bench that has it.
   */
  @Override
  public void close() {
    if (open.compareAndSet(true, false)) {
      sessions.close();
      server.stop(0);
      workers.shutdown();
      timer.shutdown();
      host.changed();
    }
  }
}
