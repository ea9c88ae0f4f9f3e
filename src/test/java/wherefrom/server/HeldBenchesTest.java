package wherefrom.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.job.By;
import wherefrom.job.LogbookException;
import wherefrom.job.OpenJob;
import wherefrom.job.handling.Handling;
import wherefrom.job.settings.ServerAddress;

/** The way to the server is cut under a bench: no number is ever two programs'. */
class HeldBenchesTest {
  private static final String LOST = "Another program took bench 1 while the way to the";

  private final ServerAddress address = TestServer.empty();
  private final Crossing crossing = new Crossing(address.port());
  private final Database near =
      new Database(
          new ServerAddress("localhost", crossing.port(), address.database(), address.user()),
          Map.of());
  private final Database beyond = new Database(address, Map.of());
  private int id;
  private OpenJob job;

  @BeforeEach
  void begin() {
    id = ServerTroubleTest.begun(beyond);
    job = open(near);
  }

  private OpenJob open(Database on) {
    return OpenJob.in(Path.of("launch"), ServerLogbook.open(on, id), Clock.systemUTC(), By.FIRST);
  }

  @AfterEach
  void end() {
    job.close();
    near.close();
    beyond.close();
    crossing.close();
  }

  /** The server frees a bench soon after its connection is gone. */
  private OpenJob another(int bench) {
    for (int tries = 0; tries < 1_000; tries++) {
      OpenJob other = open(beyond);
      if (other.by().bench() == bench) {
        return other;
      }
      other.close();
    }
    throw new AssertionError("bench " + bench + " is never free");
  }

  private long sequence() {
    return beyond.ask(connection -> (long) LineRows.newer(connection, id, 0).size());
  }

  @Test
  void aBenchThatAnotherTookMeanwhileWritesNothingMore() {
    crossing.close(true);
    try (OpenJob other = another(1)) {
      crossing.close(false);
      new Handling(other).note(1, "theirs");
      assertThatThrownBy(() -> new Handling(job).note(1, "ours"))
          .isInstanceOf(LogbookException.class)
          .hasMessageStartingWith(LOST);
      assertThat(sequence()).isEqualTo(2);
      assertThat(job.condition().writable()).isFalse();
    }
  }

  @Test
  void whoWatchesIsToldThatItsBenchIsAnothers() throws InterruptedException {
    CountDownLatch told = new CountDownLatch(1);
    crossing.close(true);
    try (OpenJob other = another(1)) {
      assertThat(other.by().bench()).isEqualTo(1);
      job.watch(
          () -> {
            if (!job.condition().writable()) {
              told.countDown();
            }
          });
      crossing.close(false);
      assertThat(told.await(20, TimeUnit.SECONDS)).isTrue();
      assertThat(job.condition().sentence()).startsWith(LOST);
    }
  }

  @Test
  void aBenchThatAnotherTookAndLeftIsTakenAgain() {
    crossing.close(true);
    OpenJob other = another(1);
    new Handling(other).note(1, "theirs");
    other.close();
    crossing.close(false);
    new Handling(job).note(1, "ours");
    assertThat(sequence()).isEqualTo(3);
    try (OpenJob third = open(beyond)) {
      assertThat(third.by().bench()).as("bench 1 is held again").isEqualTo(2);
    }
  }

  @Test
  void aBenchIsHeldThoughTheServerThinksThatTheBrokenConnectionLives() throws InterruptedException {
    CountDownLatch back = new CountDownLatch(2);
    job.watch(back::countDown);
    new Handling(job).note(1, "one");
    crossing.strand();
    assertThat(back.await(20, TimeUnit.SECONDS)).as("the server is back").isTrue();
    crossing.unstrand();
    new Handling(job).note(1, "two");
    assertThat(job.condition().sentence()).isEmpty();
    try (OpenJob other = open(beyond)) {
      assertThat(other.by().bench()).isEqualTo(2);
    }
  }
}
