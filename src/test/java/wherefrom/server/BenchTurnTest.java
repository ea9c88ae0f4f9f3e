package wherefrom.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import wherefrom.job.By;
import wherefrom.job.OpenJob;
import wherefrom.job.handling.Handling;
import wherefrom.job.settings.ServerAddress;

/** Benches that write one job at once take turns, and none waits for a dead one for ever. */
class BenchTurnTest {
  private static final int LONG_MS = 30_000;

  private final ServerAddress address = TestServer.empty();
  private final Database database = new Database(address, Map.of());
  private final Database other = new Database(address, Map.of());
  private final int id = ServerTroubleTest.begun(database);

  @AfterEach
  void end() {
    database.close();
    other.close();
  }

  private OpenJob bench(Database on, int number) {
    By by = new By(number, "");
    return OpenJob.in(Path.of("x"), ServerLogbook.open(on, id), Clock.systemUTC(), by);
  }

  /** How many turns are taken or waited for. */
  private int turns() throws SQLException {
    return database.once(
        connection -> {
          try (Statement statement = connection.createStatement();
              ResultSet found =
                  statement.executeQuery(
                      "select count(*) from pg_locks l join pg_database d on d.oid = l.database"
                          + " where locktype = 'advisory' and objid = 0"
                          + " and datname = current_database()")) {
            found.next();
            return found.getInt(1);
          }
        });
  }

  @Test
  void whoWasNotFirstHasTheTurnWhileItJudgesAnewAndNoLonger() throws SQLException {
    try (OpenJob here = bench(database, 1);
        OpenJob there = bench(other, 2)) {
      int[] held = new int[3];
      int[] tries = new int[1];
      here.inOne(
          () -> {
            held[tries[0]] = count();
            if (tries[0]++ < 2) {
              new Handling(there).note(1, "first");
            }
            new Handling(here).note(1, "second");
          });
      assertThat(held).as("turns at each try").containsExactly(0, 0, 1);
      assertThat(turns()).as("once it is written").isZero();
      assertThat(here.history()).hasSize(4);
    }
  }

  private int count() {
    try {
      return turns();
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private static int seven(BenchTurn turn) throws SQLException {
    return turn.once(connection -> 7);
  }

  @Test
  void aBenchThatSaysNothingLosesItsTurn() throws SQLException {
    BenchTurn silent = new BenchTurn(database, id, LONG_MS, 100);
    silent.takeLost();
    assertThat(turns()).isEqualTo(1);
    BenchTurn next = new BenchTurn(other, id, LONG_MS, LONG_MS);
    next.takeLost();
    assertThat(next.isHeld()).isTrue();
    assertThat(seven(silent)).as("goes on without a turn").isEqualTo(7);
    silent.leave();
    next.leave();
    assertThat(turns()).isZero();
  }

  @Test
  void aBenchWhoseProgramIsGoneLosesItsTurn() {
    Database gone = new Database(address, Map.of());
    BenchTurn dead = new BenchTurn(gone, id, LONG_MS, LONG_MS);
    dead.takeLost();
    gone.close();
    BenchTurn next = new BenchTurn(other, id, LONG_MS, LONG_MS);
    next.takeLost();
    assertThat(next.isHeld()).isTrue();
    next.leave();
  }

  @Test
  void whoseTurnDoesNotComeGoesOnWithout() throws SQLException {
    BenchTurn slow = new BenchTurn(database, id, LONG_MS, LONG_MS);
    slow.takeLost();
    BenchTurn hasty = new BenchTurn(other, id, 50, LONG_MS);
    assertThat(hasty.takeLost()).as("waited").isTrue();
    assertThat(hasty.isHeld()).isFalse();
    assertThat(hasty.takeLost()).as("waits once, not at each try").isFalse();
    assertThat(seven(hasty)).isEqualTo(7);
    hasty.leave();
    slow.leave();
    assertThat(turns()).isZero();
  }

  @Test
  void aTurnLeavesTheConnectionAsItWas() throws SQLException {
    BenchTurn turn = new BenchTurn(database, id, 77, 777_000);
    turn.takeLost();
    turn.leave();
    for (int at = 0; at < 3; at++) {
      assertThat(show("lock_timeout") + show("idle_session_timeout")).isEqualTo("00");
    }
  }

  private String show(String setting) throws SQLException {
    return database.once(
        connection -> {
          try (Statement statement = connection.createStatement();
              ResultSet found = statement.executeQuery("show " + setting)) {
            found.next();
            return found.getString(1);
          }
        });
  }
}
