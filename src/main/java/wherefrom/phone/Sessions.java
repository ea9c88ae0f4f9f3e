package wherefrom.phone;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import wherefrom.job.phone.PhoneBench;
import wherefrom.job.phone.PhoneDoor.Joined;

/** The phones that have joined. Once it is closed nobody joins any more. */
final class Sessions implements AutoCloseable {
  private static final Duration NEAR = Duration.ofSeconds(30);

  private final Limits limits;
  private final List<Session> all = new CopyOnWriteArrayList<>();
  private int last;
  private boolean closed;

  Sessions(Limits limits) {
    this.limits = limits;
  }

  boolean isFull() {
    return all.size() >= limits.phones();
  }

  /**
   * A phone joins.
   *
   * @return empty where it was closed or filled meanwhile: the bench is the caller's to let go of
   */
  synchronized Optional<Session> add(String name, String cookie, PhoneBench bench, long now) {
    if (closed || isFull()) {
      return Optional.empty();
    }
    last++;
    Bucket requests = new Bucket(limits.burst(), limits.perSecond(), now);
    Session session = new Session(last, name, Secret.of(cookie), bench, requests, now);
    all.add(session);
    return Optional.of(session);
  }

  /** The phone with this cookie. All are compared, so that time tells nothing. */
  Optional<Session> find(String cookie) {
    return all.stream().filter(one -> one.isOf(cookie)).reduce((first, second) -> first);
  }

  /**
   * Puts a phone out.
   *
   * @return whether there was one with this number
   */
  boolean remove(int number) {
    Optional<Session> gone = all.stream().filter(one -> one.number() == number).findFirst();
    return gone.filter(this::end).isPresent();
  }

  /** Puts every phone out, and lets no other join. */
  @Override
  public void close() {
    synchronized (this) {
      closed = true;
    }
    all.forEach(this::end);
  }

  /** Out of the list first, so that nothing more is begun at the bench that is let go. */
  private boolean end(Session phone) {
    boolean in = all.remove(phone);
    if (in) {
      phone.end();
    }
    return in;
  }

  List<Joined> list(long now) {
    return all.stream()
        .map(one -> new Joined(one.number(), one.name(), now - one.seen() < NEAR.toNanos()))
        .toList();
  }
}
