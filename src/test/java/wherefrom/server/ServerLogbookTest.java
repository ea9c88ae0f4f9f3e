package wherefrom.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.By;
import wherefrom.job.LogbookException;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.handling.Handling;
import wherefrom.job.settings.ServerAddress;
import wherefrom.job.shelf.Shelf;
import wherefrom.logbook.FileShelf;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

/** A logbook on a real server that two benches write. */
class ServerLogbookTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-01T10:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private final ServerAddress address = TestServer.empty();
  private Database database;
  private Database other;
  private OpenJob first;
  private OpenJob second;

  private Shelf shelf(Database on, By by, String cache) {
    Path there = folder.resolve(cache);
    FileShelf copies = new FileShelf(there, CLOCK, () -> 7);
    return new ServerShelf(on, new Mirror(on, there), copies, copies, CLOCK, by);
  }

  @BeforeEach
  void begin() {
    database = new Database(address, Map.of());
    other = new Database(address, Map.of());
    Shelf.NewJob begun =
        new Shelf.NewJob(
            "Launch V8",
            ReadyLayouts.find("v8-odd-even").orElseThrow(),
            PartKind.alwaysOn(),
            UnitSystem.INCH);
    first = shelf(database, By.FIRST, "one").create(begun);
    second = shelf(other, By.FIRST, "two").open(Path.of("launch-v8"));
  }

  @AfterEach
  void end() {
    first.close();
    second.close();
    database.close();
    other.close();
  }

  @Test
  void aSecondBenchTakesTheNextNumberAndWritesOn() {
    assertThat(first.by().bench()).isEqualTo(1);
    assertThat(second.by().bench()).isEqualTo(2);
    new Handling(first).note(1, "one");
    new Handling(second).note(1, "two");
    new Handling(first).note(1, "three");
    new Handling(second).note(1, "four");
    assertThat(first.sequence()).isEqualTo(4);
    assertThat(first.catchUp()).as("nobody listens yet").isFalse();
    new Handling(first).note(1, "five");
    assertThat(first.history()).hasSize(6);
    new Handling(second).note(1, "six");
    assertThat(second.history()).hasSize(7).startsWith(first.history().toArray(new LoggedEntry[0]));
  }

  @Test
  void theFolderByWhichAJobIsKnownIsThere() {
    assertThat(first.folder()).isDirectory();
    assertThat(second.folder()).isDirectory();
  }

  @Test
  void aBenchThatListensHearsOfTheOther() throws InterruptedException {
    CountDownLatch heard = new CountDownLatch(1);
    second.watch(heard::countDown);
    new Handling(first).note(1, "one");
    assertThat(heard.await(10, TimeUnit.SECONDS)).isTrue();
    assertThat(second.catchUp()).isTrue();
    assertThat(second.history()).isEqualTo(first.history());
  }

  @Test
  void whatIsWrittenIsNeverChanged() {
    assertThatThrownBy(
            () ->
                database.once(
                    connection -> {
                      try (Statement statement = connection.createStatement()) {
                        return statement.executeUpdate("update entry set sequence = 99");
                      }
                    }))
        .isInstanceOf(SQLException.class)
        .hasMessageContaining("never changed");
  }

  @Test
  void aDamagedNewLineIsToldToWhoeverWatches() throws Exception {
    CountDownLatch heard = new CountDownLatch(1);
    second.watch(
        () -> {
          if (!second.condition().writable()) {
            heard.countDown();
          }
        });
    database.once(
        connection -> {
          try (Statement statement = connection.createStatement()) {
            return statement.executeUpdate(
                "insert into entry (job, sequence, sitting, act, line)"
                    + " select job, 2, sitting, 99, line from entry where sequence = 1");
          }
        });
    assertThat(heard.await(20, TimeUnit.SECONDS)).as("the watcher is told").isTrue();
    assertThat(second.condition().sentence())
        .startsWith("The logbook on the server is damaged, or newer than this program: entry 2,");
    assertThatThrownBy(() -> new Handling(second).note(1, "two"))
        .isInstanceOf(LogbookException.class)
        .hasMessageContaining("The logbook on the server is damaged");
    assertThatThrownBy(() -> new Handling(first).note(1, "two"))
        .as("who does not watch is told when he writes")
        .isInstanceOf(LogbookException.class)
        .hasMessageContaining("The logbook on the server is damaged");
  }

  @Test
  void whatAgreesNotWithItsSumOpensForReadingOnly() throws SQLException {
    new Handling(first).note(1, "one");
    database.once(
        connection -> {
          try (Statement statement = connection.createStatement()) {
            statement.execute("alter table entry disable trigger all");
            return statement.executeUpdate(
                "update entry set line = set_byte(line, 40, 65) where sequence = 2");
          }
        });
    try (OpenJob damaged = shelf(database, By.FIRST, "three").open(Path.of("launch-v8"))) {
      assertThat(damaged.condition().writable()).isFalse();
      assertThat(damaged.history()).hasSize(1);
      assertThatThrownBy(() -> new Handling(damaged).note(1, "two"))
          .isInstanceOf(LogbookException.class);
    }
  }
}
