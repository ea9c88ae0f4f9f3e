package wherefrom.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import wherefrom.job.LogbookCondition;
import wherefrom.job.settings.ServerAddress;

/** A server that is set to forget is told of when a job is opened. */
class ServerPromiseTest {
  private final ServerAddress address = TestServer.empty();
  private final Database database = new Database(address, Map.of());
  private final int id = ServerTroubleTest.begun(database);

  @AfterEach
  void end() {
    database.close();
  }

  private void run(String sql) throws SQLException {
    database.once(
        connection -> {
          try (Statement statement = connection.createStatement()) {
            return statement.execute(sql);
          }
        });
  }

  private LogbookCondition opened() {
    try (ServerLogbook logbook = ServerLogbook.open(database, id)) {
      return logbook.condition();
    }
  }

  @Test
  void aServerThatKeepsWhatItSaysIsNotTalkedOf() {
    assertThat(opened()).isEqualTo(new LogbookCondition.Sound());
  }

  private static void reset(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("reset synchronous_commit");
    }
  }

  @Test
  void whatIsOffIsSaidAndWorkGoesOn() throws SQLException {
    // The session's own setting is the one of the three that a test may turn off by itself.
    String told =
        database.once(
            connection -> {
              try (Statement statement = connection.createStatement()) {
                statement.execute("set synchronous_commit = off");
                return ServerPromise.findBroken(connection);
              } finally {
                reset(connection);
              }
            });
    assertThat(told)
        .isEqualTo(
            "The shared server can lose steps in a power cut. On it, turn on synchronous_commit.");
    assertThat(new LogbookCondition.Unkept(told).writable()).isTrue();
  }

  @Test
  void aServerThatDoesNotWriteThroughIsSaidToTheBench() throws SQLException {
    run("alter system set full_page_writes = off");
    try {
      run("select pg_reload_conf()");
      LogbookCondition condition = opened();
      // The server takes its settings in by itself, soon after it was told to.
      long until = System.nanoTime() + Duration.ofSeconds(5).toNanos();
      while (condition.sentence().isEmpty() && System.nanoTime() < until) {
        condition = opened();
      }
      assertThat(condition)
          .isEqualTo(
              new LogbookCondition.Unkept(
                  "The shared server can lose steps in a power cut."
                      + " On it, turn on full_page_writes."));
    } finally {
      run("alter system reset full_page_writes");
      run("select pg_reload_conf()");
    }
  }

  @Test
  void aDatabaseThatIsSetToCommitLaterIsOverruled() throws SQLException {
    run("alter database " + address.database() + " set synchronous_commit = off");
    try (Database fresh = new Database(address, Map.of());
        ServerLogbook logbook = ServerLogbook.open(fresh, id)) {
      assertThat(logbook.condition()).isEqualTo(new LogbookCondition.Sound());
    }
  }
}
