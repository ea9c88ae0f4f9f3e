package wherefrom.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wherefrom.job.Benches;
import wherefrom.job.By;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.UnsentException;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.handling.Handling;
import wherefrom.job.settings.ServerAddress;
import wherefrom.logbook.LogLines;

/** The way to the server is cut while an act is sent: it is written once, or it is said. */
class ServerTroubleTest {
  private final ServerAddress address = TestServer.empty();
  private final Crossing crossing = new Crossing(address.port());
  private final Database database =
      new Database(
          new ServerAddress("localhost", crossing.port(), address.database(), address.user()),
          Map.of());
  private final Database beyond = new Database(address, Map.of());
  private OpenJob job;

  @BeforeEach
  void begin() {
    job = open(begun(beyond));
  }

  /** A job with nothing but its opening. */
  static int begun(Database database) {
    LoggedEntry opened = Benches.fresh().history().get(0);
    byte[] header = LogLines.header();
    LogLines.Line line = new LogLines.Line(header, LogLines.line(opened, LogLines.sum(header)));
    new NewRows(database).add("launch", Benches.ENGINE, List.of(line), Map.of());
    return database.ask(connection -> LineRows.findJob(connection, "launch")).orElseThrow();
  }

  private OpenJob open(int id) {
    return OpenJob.in(
        Path.of("launch"), ServerLogbook.open(database, id), Clock.systemUTC(), By.FIRST);
  }

  @AfterEach
  void end() {
    job.close();
    database.close();
    beyond.close();
    crossing.close();
  }

  private List<String> notes() {
    int id = beyond.ask(connection -> LineRows.findJob(connection, "launch")).orElseThrow();
    return LogLines.read(
            beyond.ask(connection -> LineRows.newer(connection, id, 0)).stream()
                .map(LineRows.Row::line)
                .toList())
        .entries()
        .stream()
        .filter(logged -> logged.entry() instanceof NoteAdded)
        .map(logged -> ((NoteAdded) logged.entry()).text())
        .toList();
  }

  private void note(String text) {
    new Handling(job).note(1, text);
  }

  @Test
  void anActWhoseAnswerWasLostIsWrittenOnce() throws InterruptedException {
    note("one");
    crossing.deafen(true);
    Thread mender =
        new Thread(
            () -> {
              try {
                crossing.awaitUnheard();
              } catch (InterruptedException e) {
                throw new IllegalStateException(e);
              }
              crossing.deafen(false);
              crossing.cut();
            });
    mender.start();
    note("two");
    mender.join();
    note("three");
    assertThat(notes()).containsExactly("one", "two", "three");
    assertThat(job.history()).hasSize(4);
  }

  @Test
  void withoutAWayItIsSaidAndNothingIsDone() {
    note("one");
    crossing.close(true);
    assertThatThrownBy(() -> note("two"))
        .isInstanceOf(UnsentException.class)
        .hasMessage("No connection to the shared server localhost. Nothing is shown as done.");
    assertThat(job.isUnsettled()).isTrue();
    assertThat(job.history()).hasSize(2);
    crossing.close(false);
    assertThat(job.settle()).as("it was not written").isEmpty();
    note("two");
    assertThat(notes()).containsExactly("one", "two");
    assertThat(job.isUnsettled()).isFalse();
  }

  @Test
  void whatWasWrittenUnheardIsFoundAgain() {
    note("one");
    crossing.deafen(true);
    assertThatThrownBy(() -> note("two")).isInstanceOf(UnsentException.class);
    assertThat(notes()).containsExactly("one", "two");
    crossing.deafen(false);
    crossing.cut();
    assertThat(job.settle().map(LoggedEntry::entry)).contains(new NoteAdded(1, "two"));
    assertThat(job.history()).hasSize(3);
    note("three");
    assertThat(notes()).containsExactly("one", "two", "three");
  }

  @Test
  void whoIsToldToEndTriesNoMore() {
    AtomicInteger tries = new AtomicInteger();
    Thread.currentThread().interrupt();
    assertThatThrownBy(
            () ->
                beyond.sendUntilHeard(
                    connection -> {
                      tries.incrementAndGet();
                      throw new SQLException("cut", "08006");
                    }))
        .isInstanceOf(UnsentException.class);
    assertThat(Thread.interrupted()).as("it goes on being told").isTrue();
    assertThat(tries).hasValue(1);
  }

  @Test
  void whatWasSentUnheardStaysSoWhateverIsSaidThen() {
    AtomicInteger tries = new AtomicInteger();
    assertThatThrownBy(
            () ->
                beyond.sendUntilHeard(
                    connection -> {
                      throw new SQLException("", tries.getAndIncrement() == 0 ? "08006" : "53100");
                    }))
        .isInstanceOf(UnsentException.class)
        .hasMessageStartingWith("The disk of the shared server localhost is full.");
    assertThat(tries).hasValue(2);
  }

  @Test
  void whatIsTakenAMomentLaterIsSentAgain() {
    AtomicInteger tries = new AtomicInteger();
    int written =
        beyond.sendUntilHeard(
            connection -> {
              if (tries.incrementAndGet() < 3) {
                throw new SQLException("at once", "40001");
              }
              return tries.get();
            });
    assertThat(written).isEqualTo(3);
  }

  @Test
  void whoListensIsToldWhenTheServerIsBack() throws InterruptedException {
    CountDownLatch told = new CountDownLatch(1);
    crossing.close(true);
    assertThatThrownBy(() -> note("one")).isInstanceOf(UnsentException.class);
    job.watch(told::countDown);
    crossing.close(false);
    assertThat(told.await(20, TimeUnit.SECONDS)).isTrue();
    assertThat(job.settle()).isEmpty();
    note("one");
    assertThat(notes()).containsExactly("one");
  }
}
