package wherefrom.server;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.UUID;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.postgresql.PGConnection;
import org.postgresql.PGNotification;
import wherefrom.job.LogbookException;

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
  private final HeldBenches benches;
  private Optional<Connection> connection = Optional.empty();
  private boolean listening;
  private volatile boolean closed;

  /**
   * @param sitting by which the server knows this opening of the job
   */
  Listener(Database database, int job, UUID sitting, News news) {
    this.database = database;
    this.job = job;
    this.benches = new HeldBenches(job, sitting);
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
        if (!Pause.took(AGAIN_MS)) {
          return;
        }
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
    if (closed) {
      throw new SQLException("the job is put away");
    }
    Connection made = database.connectAlone();
    connection = Optional.of(made);
    try (Statement statement = made.createStatement()) {
      statement.execute("listen " + Tables.CHANNEL);
    }
    benches.holdAgain(made);
    return made;
  }

  /** Takes a bench that no other program and nobody in this one has. */
  synchronized int takeBench(int wanted) {
    try {
      return benches.take(connect(), wanted);
    } catch (SQLException e) {
      leave();
      throw ServerTrouble.asking(database.address(), e);
    }
  }

  synchronized void leaveBench(int bench) {
    try {
      benches.leave(connection, bench);
    } catch (SQLException e) {
      leave();
    }
  }

  /** A bench that another program took while the way to the server was cut. */
  synchronized Optional<Integer> findLostBench() {
    return benches.findLost();
  }

  /**
   * Sees to it that the benches are held by a connection that lives.
   *
   * @throws LogbookException where the server does not answer
   */
  synchronized void holdBenches() {
    try {
      run("select 1");
    } catch (SQLException e) {
      leave();
      connectOrSay();
    }
  }

  private void connectOrSay() {
    try {
      connect();
    } catch (SQLException e) {
      leave();
      throw ServerTrouble.asking(database.address(), e);
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

  @Override
  public void close() {
    closed = true;
    leave();
  }
}
