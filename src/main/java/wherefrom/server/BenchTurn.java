package wherefrom.server;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * A bench's turn at a job that several write at once: whoever was not first waits in a row for the
 * next try, so that of many benches one judges and writes and the others do not judge in vain. It
 * orders the benches, no more: who has no turn may write all the same, and what may be written is
 * the logbook's own to say. Safe for several threads.
 */
final class BenchTurn {
  private static final Logger LOGGER = Logger.getLogger("wherefrom");

  /** A first loss is tried again at once: a turn costs more than a second loss is likely. */
  private static final int LOSSES = 2;

  /** What a bench waits for its turn at most; then it tries without. */
  private static final int WAIT_MS = 2_000;

  /**
   * What a turn lasts at most between two words to the server. Its holder may be gone without a
   * word, or have judged that there is nothing to write.
   */
  private static final int IDLE_MS = 1_000;

  private final Database database;
  private final int job;
  private final int waitMs;
  private final int idleMs;
  private Optional<Connection> held = Optional.empty();
  private int losses;
  private int first;

  BenchTurn(Database database, int job) {
    this(database, job, WAIT_MS, IDLE_MS);
    losses = -(LOSSES - 1);
    first = losses;
  }

  /**
   * @param waitMs milliseconds to wait for the turn at most
   * @param idleMs milliseconds after which the server ends the turn of a bench that says nothing
   */
  BenchTurn(Database database, int job, int waitMs, int idleMs) {
    this.database = database;
    this.job = job;
    this.waitMs = waitMs;
    this.idleMs = idleMs;
  }

  /**
   * Another bench was first: waits for a turn, which lasts until {@link #leave}.
   *
   * @return whether it waited
   */
  synchronized boolean takeLost() {
    losses++;
    return losses == 1 && held.isEmpty() && take();
  }

  /** Waits for the turn; where it does not come, or the server is away, goes on without. */
  private boolean take() {
    Connection borrowed;
    try {
      borrowed = database.borrow();
    } catch (SQLException e) {
      return false;
    }
    try {
      // In one word to the server. The lock is beside those of the benches, which begin at 1.
      run(
          borrowed,
          String.format(
              Locale.ROOT,
              "set lock_timeout = %d; set idle_session_timeout = %d; select pg_advisory_lock(%d, 0)",
              waitMs,
              idleMs,
              job));
      held = Optional.of(borrowed);
    } catch (SQLException e) {
      LOGGER.log(Level.FINE, "No turn at the shared job.", e);
      database.drop(borrowed);
    }
    return true;
  }

  private static void run(Connection on, String sql) throws SQLException {
    try (Statement statement = on.createStatement()) {
      statement.execute(sql);
    }
  }

  /** Whether the turn is this bench's. */
  synchronized boolean isHeld() {
    return held.isPresent();
  }

  /**
   * Does something with a connection, once: with the turn's own where there is one.
   *
   * @throws SQLException as the server or the way to it says it; the turn is then over
   */
  <T> T once(Database.Work<T> work) throws SQLException {
    synchronized (this) {
      if (held.isPresent()) {
        return onTurn(held.get(), work);
      }
    }
    return database.once(work);
  }

  /**
   * Asks the server something that changes nothing.
   *
   * @throws wherefrom.job.LogbookException with a sentence where it does not answer
   */
  <T> T ask(Database.Work<T> work) {
    try {
      return once(work);
    } catch (SQLException e) {
      return database.ask(work);
    }
  }

  private <T> T onTurn(Connection mine, Database.Work<T> work) throws SQLException {
    try {
      return work.on(mine);
    } catch (SQLException e) {
      held = Optional.empty();
      database.drop(mine);
      throw e;
    }
  }

  /** Lets the next one go. */
  synchronized void leave() {
    losses = first;
    held.ifPresent(this::giveBack);
    held = Optional.empty();
  }

  private void giveBack(Connection mine) {
    try (mine) {
      run(
          mine,
          String.format(
              Locale.ROOT,
              "select pg_advisory_unlock(%d, 0); reset idle_session_timeout; reset lock_timeout",
              job));
    } catch (SQLException e) {
      LOGGER.log(Level.FINE, "A turn was over already.", e);
      database.drop(mine);
    }
  }
}
