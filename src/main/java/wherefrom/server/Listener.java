package wherefrom.server;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.postgresql.PGConnection;
import org.postgresql.PGNotification;

/**
 * Hears what other benches write, and holds the benches of this program: both on one connection of
 * its own, which is made anew where it breaks. A bench is free again when its connection is gone.
 */
final class Listener implements AutoCloseable {
  /** What is told when something was written; true when the server was away and is back. */
  @FunctionalInterface
  interface News {
    void hear(boolean back);
  }

  private static final Logger LOGGER = Logger.getLogger("wherefrom");
  private static final int WAIT_MS = 250;
  private static final int AGAIN_MS = 500;

  /**
   * After so many silent waits it is asked whether the server is there: a cut cable says nothing.
   */
  private static final int SILENT = 12;

  private final Database database;
  private final int job;
  private final News news;
  private final SortedSet<Integer> benches = new TreeSet<>();
  private Optional<Connection> connection = Optional.empty();
  private boolean listening;
  private volatile boolean closed;

  Listener(Database database, int job, News news) {
    this.database = database;
    this.job = job;
    this.news = news;
  }

  /** Listens from now on, on a thread of its own. */
  synchronized void start() {
    if (!listening) {
      listening = true;
      Thread thread = new Thread(this::listen, "shared server");
      thread.setDaemon(true);
      thread.start();
    }
  }

  private void listen() {
    boolean back = false;
    while (!closed) {
      try {
        PGConnection heard = connect().unwrap(PGConnection.class);
        news.hear(back);
        hear(heard);
      } catch (SQLException e) {
        LOGGER.log(Level.FINE, "The shared server is away.", e);
        leave();
        back = true;
        pause();
      }
    }
  }

  private void hear(PGConnection heard) throws SQLException {
    int silent = 0;
    while (!closed) {
      PGNotification[] told = heard.getNotifications(WAIT_MS);
      silent = told == null || told.length == 0 ? silent + 1 : 0;
      if (silent == 0 && isOfJob(told)) {
        news.hear(false);
      } else if (silent >= SILENT) {
        silent = 0;
        run("select 1");
      }
    }
  }

  private boolean isOfJob(PGNotification[] told) {
    for (PGNotification each : told) {
      if (each.getParameter().equals(Integer.toString(job))) {
        return true;
      }
    }
    return false;
  }

  private void run(String sql) throws SQLException {
    try (Statement statement = connect().createStatement()) {
      statement.execute(sql);
    }
  }

  /** The connection; where it was broken, it listens and holds its benches again. */
  private synchronized Connection connect() throws SQLException {
    if (connection.isPresent()) {
      return connection.get();
    }
    Connection made = database.connectAlone();
    connection = Optional.of(made);
    try (Statement statement = made.createStatement()) {
      statement.execute("listen " + Tables.CHANNEL);
    }
    for (int bench : benches) {
      hold(made, bench);
    }
    return made;
  }

  private boolean hold(Connection on, int bench) throws SQLException {
    try (PreparedStatement lock = on.prepareStatement("select pg_try_advisory_lock(?, ?)")) {
      lock.setInt(1, job);
      lock.setInt(2, bench);
      try (ResultSet held = lock.executeQuery()) {
        return held.next() && held.getBoolean(1);
      }
    }
  }

  /** Takes a bench that no other program and nobody in this one has. */
  synchronized int takeBench(int wanted) {
    try {
      int bench = wanted;
      while (benches.contains(bench) || !hold(connect(), bench)) {
        bench++;
      }
      benches.add(bench);
      return bench;
    } catch (SQLException e) {
      leave();
      throw database.away(e);
    }
  }

  synchronized void leaveBench(int bench) {
    benches.remove(bench);
    if (connection.isPresent()) {
      try (PreparedStatement free =
          connection.get().prepareStatement("select pg_advisory_unlock(?, ?)")) {
        free.setInt(1, job);
        free.setInt(2, bench);
        free.execute();
      } catch (SQLException e) {
        leave();
      }
    }
  }

  private synchronized void leave() {
    connection.ifPresent(Listener::closeQuietly);
    connection = Optional.empty();
  }

  private static void closeQuietly(Connection broken) {
    try {
      broken.close();
    } catch (SQLException e) {
      LOGGER.log(Level.FINE, "A connection could not be closed.", e);
    }
  }

  private static void pause() {
    try {
      Thread.sleep(AGAIN_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    closed = true;
    leave();
  }
}
