package wherefrom.phone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.security.SecureRandom;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import wherefrom.job.By;
import wherefrom.job.UnsentException;
import wherefrom.job.phone.PhoneDoor;
import wherefrom.phone.Caller.Said;

/** A phone is put out, or the door closed, while something is done for it. */
class DoorEndsTest extends DoorBench {
  private Caller joined() {
    return joined("");
  }

  /** A picture that is being read, until it may go on. */
  private final class Held implements Runnable {
    final CountDownLatch came = new CountDownLatch(1);
    final CountDownLatch goOn = new CountDownLatch(1);
    final CompletableFuture<Boolean> interrupted = new CompletableFuture<>();

    @Override
    public void run() {
      came.countDown();
      try {
        goOn.await();
        interrupted.complete(Thread.currentThread().isInterrupted());
      } catch (InterruptedException e) {
        interrupted.complete(true);
      }
    }

    CompletableFuture<Said> begin(Caller phone) throws InterruptedException {
      host.before = this;
      byte[] picture = photograph("pushrod@3EX");
      CompletableFuture<Said> answer = CompletableFuture.supplyAsync(() -> phone.photo(picture));
      came.await();
      return answer;
    }
  }

  /** An interrupt closes the file of the logbook, under the window too. */
  @Test
  void whoIsAtWorkIsNotInterruptedWhenTheDoorCloses() throws Exception {
    Held held = new Held();
    held.begin(joined());
    door.close();
    held.goOn.countDown();
    assertThat(held.interrupted.get()).isFalse();
  }

  @Test
  void aPhoneThatIsPutOutWhileItsPictureIsReadWritesNothing() throws Exception {
    Caller phone = joined();
    phone.code(sample.card("3EX"));
    long before = entries();
    Held held = new Held();
    CompletableFuture<Said> answer = held.begin(phone);
    door.putOut(door.joined().get(0).number());
    held.goOn.countDown();
    assertThat(answer.get().status()).isEqualTo(401);
    assertThat(entries()).isEqualTo(before);
  }

  /** The bench that it leaves is taken by another, in whose name nothing of it is written. */
  @Test
  void whatAPhoneThatWasPutOutBeganIsNotWrittenForWhoHasItsBenchNow() throws Exception {
    Caller phone = joined();
    phone.code(sample.card("3EX"));
    Held held = new Held();
    CompletableFuture<Said> answer = held.begin(phone);
    door.putOut(door.joined().get(0).number());
    Caller next = joined();
    held.goOn.countDown();
    answer.get();
    host.before = () -> {};
    assertThat(next.act("undo", "").body()).contains("There is nothing left to undo.");
    sample.job.catchUp();
    assertThat(sample.job.state().fitted()).isEmpty();
  }

  @Test
  void whoJoinsWhileTheDoorClosesHasNoBench() {
    Consumer<byte[]> random = new SecureRandom()::nextBytes;
    Invitations invitations = new Invitations(Limits.USUAL, System::nanoTime, random);
    Sessions sessions = new Sessions(Limits.USUAL);
    Entrance entrance = new Entrance(host, invitations, sessions, System::nanoTime, random);
    invitations.fresh();
    Map<String, String> key = Map.of("key", invitations.current().orElseThrow().words());
    host.joining = sessions::close;
    assertThatThrownBy(() -> entrance.join(key, "127.0.0.1")).isInstanceOf(Refused.class);
    assertThat(sessions.list(System.nanoTime())).isEmpty();
    assertThat(sample.job.beside(new By(2, "")).by().bench()).as("it is free").isEqualTo(2);
  }

  @Test
  void whereNoBenchIsToBeHadTheKeyIsNotUsedUp() {
    String link = link();
    host.joining =
        () -> {
          throw new UnsentException("No connection to the shared server bench-pc.", null);
        };
    Caller phone = new Caller(door.address());
    Said refused = phone.join(link, "");
    assertThat(refused.status()).isEqualTo(503);
    assertThat(refused.body()).contains("No connection to the shared server bench-pc.");
    assertThat(door.joined()).isEmpty();
    host.joining = () -> {};
    assertThat(phone.join(link, "").status()).isEqualTo(200);
  }

  /** Of two that come at once with one key, one is in, and the other holds no bench. */
  @Test
  void theKeyLetsOneInHoweverManyComeWithItAtOnce() {
    String link = link();
    Caller second = new Caller(door.address());
    host.joining =
        () -> {
          host.joining = () -> {};
          assertThat(second.join(link, "second").status()).isEqualTo(200);
        };
    assertThat(new Caller(door.address()).join(link, "first").status()).isEqualTo(403);
    assertThat(door.joined()).extracting(PhoneDoor.Joined::name).containsExactly("second");
    assertThat(sample.job.beside(new By(2, "")).by().bench()).as("one is taken").isEqualTo(3);
  }

  @Test
  void threadsThatHaveNothingToDoEnd() throws InterruptedException {
    CountDownLatch ended = new CountDownLatch(2);
    CountDownLatch both = new CountDownLatch(2);
    ExecutorService workers =
        Door.workers(work -> new Thread(() -> end(work, ended)), Duration.ofMillis(1));
    for (int at = 0; at < 2; at++) {
      workers.execute(both::countDown);
    }
    both.await();
    assertThat(ended.await(60, TimeUnit.SECONDS)).isTrue();
  }

  private static void end(Runnable work, CountDownLatch ended) {
    work.run();
    ended.countDown();
  }
}
