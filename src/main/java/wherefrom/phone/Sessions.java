package wherefrom.phone;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import wherefrom.job.phone.PhoneBench;
import wherefrom.job.phone.PhoneDoor.Joined;

/** The phones that have joined. */
final class Sessions {
  private static final Duration NEAR = Duration.ofSeconds(30);

  private final Limits limits;
  private final List<Session> all = new CopyOnWriteArrayList<>();
  private final AtomicInteger numbers = new AtomicInteger();

  Sessions(Limits limits) {
    this.limits = limits;
  }

  boolean isFull() {
    return all.size() >= limits.phones();
  }

  Session add(String name, String cookie, PhoneBench bench, long now) {
    Bucket requests = new Bucket(limits.burst(), limits.perSecond(), now);
    Session session =
        new Session(numbers.incrementAndGet(), name, Secret.of(cookie), bench, requests, now);
    all.add(session);
    return session;
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
    gone.ifPresent(this::end);
    return gone.isPresent();
  }

  void clear() {
    all.forEach(this::end);
  }

  /** Out of the list first, so that nothing more is begun at the bench that is let go. */
  private void end(Session phone) {
    if (all.remove(phone)) {
      phone.bench().close();
    }
  }

  List<Joined> list(long now) {
    return all.stream()
        .map(one -> new Joined(one.number(), one.name(), now - one.seen() < NEAR.toNanos()))
        .toList();
  }
}
