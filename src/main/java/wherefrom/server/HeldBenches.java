package wherefrom.server;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.UUID;
import org.postgresql.PGConnection;

/**
 * The benches of a job that one program holds: by a lock that its connection has, so that a bench
 * is free when its program is gone, and by a row that says who took it last, so that whoever lost
 * it on the way writes nothing under it. Not safe for several threads.
 */
final class HeldBenches {
  /** A connection as the server knows it; its number alone is given out again. */
  private record Session(int process, String begun) {}

  private final int job;
  private final UUID sitting;
  private final SortedSet<Integer> benches = new TreeSet<>();
  private final SortedSet<Integer> lost = new TreeSet<>();
  private Optional<Session> session = Optional.empty();

  HeldBenches(int job, UUID sitting) {
    this.job = job;
    this.sitting = sitting;
  }

  /** Takes a bench that no other program and nobody in this one has. */
  int take(Connection on, int wanted) throws SQLException {
    int bench = wanted;
    while (benches.contains(bench) || !claim(on, bench)) {
      bench++;
    }
    benches.add(bench);
    return bench;
  }

  /** Lets go of a bench. */
  void leave(Optional<Connection> on, int bench) throws SQLException {
    boolean held = benches.remove(bench) && !lost.remove(bench);
    if (held && on.isPresent()) {
      ask(on.get(), "select pg_advisory_unlock(?, ?)", bench);
    }
  }

  /**
   * Holds the benches on a new connection, in place of the one that broke. The server may not have
   * noticed yet that it did: it is told, or our own lock would stand against us.
   */
  void holdAgain(Connection on) throws SQLException {
    if (session.isPresent() && !benches.isEmpty()) {
      end(on, session.get());
    }
    session = Optional.of(session(on));
    for (int bench : benches) {
      if (!lost.contains(bench) && !claim(on, bench)) {
        requireOthers(on, bench);
        lost.add(bench);
      }
    }
  }

  /**
   * A lock that stands although nobody else took the bench is our own, of the broken connection.
   */
  private void requireOthers(Connection on, int bench) throws SQLException {
    try (PreparedStatement select =
        on.prepareStatement("select sitting from bench where job = ? and bench = ?")) {
      select.setInt(1, job);
      select.setInt(2, bench);
      try (ResultSet row = select.executeQuery()) {
        if (row.next() && sitting.equals(row.getObject(1, UUID.class))) {
          throw new SQLException("the broken connection still holds bench " + bench, "55P03");
        }
      }
    }
  }

  /** A bench that another program took while this one was away; empty where none was. */
  Optional<Integer> findLost() {
    return lost.stream().findFirst();
  }

  private boolean claim(Connection on, int bench) throws SQLException {
    boolean held = ask(on, "select pg_try_advisory_lock(?, ?)", bench);
    if (held) {
      try (PreparedStatement row =
          on.prepareStatement(
              "insert into bench (job, bench, sitting) values (?, ?, ?)"
                  + " on conflict (job, bench) do update set sitting = excluded.sitting")) {
        row.setInt(1, job);
        row.setInt(2, bench);
        row.setObject(3, sitting);
        row.executeUpdate();
      }
    }
    return held;
  }

  private boolean ask(Connection on, String lock, int bench) throws SQLException {
    try (PreparedStatement select = on.prepareStatement(lock)) {
      select.setInt(1, job);
      select.setInt(2, bench);
      try (ResultSet answer = select.executeQuery()) {
        return answer.next() && answer.getBoolean(1);
      }
    }
  }

  private static Session session(Connection on) throws SQLException {
    int process = on.unwrap(PGConnection.class).getBackendPID();
    try (PreparedStatement select =
        on.prepareStatement("select backend_start::text from pg_stat_activity where pid = ?")) {
      select.setInt(1, process);
      try (ResultSet begun = select.executeQuery()) {
        return new Session(process, begun.next() ? begun.getString(1) : "");
      }
    }
  }

  /** Waits a second at most until it has ended. */
  private static void end(Connection on, Session broken) throws SQLException {
    try (PreparedStatement select =
        on.prepareStatement(
            "select pg_terminate_backend(pid, 1000) from pg_stat_activity"
                + " where pid = ? and backend_start::text = ?")) {
      select.setInt(1, broken.process());
      select.setString(2, broken.begun());
      select.execute();
    }
  }
}
