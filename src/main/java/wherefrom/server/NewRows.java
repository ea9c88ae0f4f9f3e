package wherefrom.server;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import wherefrom.job.LogbookException;
import wherefrom.logbook.LogLines;

/** Brings whole jobs to the server: all of one, or nothing. */
final class NewRows {
  private static final String UNIQUE = "23505";

  private final Database database;

  NewRows(Database database) {
    this.database = database;
  }

  /**
   * Adds a job with all of its lines and photographs.
   *
   * @param name by which its folder is known; no other job's
   * @param photographs by their names
   * @throws LogbookException where the server has such a job, or did not answer
   */
  void add(String name, int engine, List<LogLines.Line> lines, Map<String, byte[]> photographs) {
    try {
      database.once(
          connection -> {
            connection.setAutoCommit(false);
            int job = addJob(connection, name, engine);
            addLines(connection, job, lines);
            for (Map.Entry<String, byte[]> photograph : photographs.entrySet()) {
              addPhotograph(connection, job, photograph.getKey(), photograph.getValue());
            }
            connection.commit();
            return job;
          });
    } catch (SQLException e) {
      throw UNIQUE.equals(e.getSQLState())
          ? new LogbookException("The shared server has this job already, or one of its name.", e)
          : ServerTrouble.sending(database.address(), e, false);
    }
  }

  private static int addJob(Connection connection, String name, int engine) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement("insert into job (name, engine) values (?, ?) returning id")) {
      insert.setString(1, name);
      insert.setInt(2, engine);
      try (ResultSet made = insert.executeQuery()) {
        made.next();
        return made.getInt(1);
      }
    }
  }

  private static void addLines(Connection connection, int job, List<LogLines.Line> lines)
      throws SQLException {
    UUID sitting = LineRows.sitting(connection);
    try (PreparedStatement insert =
        connection.prepareStatement(
            "insert into entry (job, sequence, sitting, act, headers, line)"
                + " values (?, ?, ?, ?, ?, ?)")) {
      for (int at = 0; at < lines.size(); at++) {
        insert.setInt(1, job);
        insert.setLong(2, at + 1L);
        insert.setObject(3, sitting);
        insert.setLong(4, at + 1L);
        insert.setBytes(5, lines.get(at).headers());
        insert.setBytes(6, lines.get(at).line());
        insert.addBatch();
      }
      insert.executeBatch();
    }
  }

  /** Adds a photograph, unless it is there. */
  static void addPhotograph(Connection connection, int job, String name, byte[] bytes)
      throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "insert into photograph (job, name, bytes) values (?, ?, ?) on conflict do nothing")) {
      insert.setInt(1, job);
      insert.setString(2, name);
      insert.setBytes(3, bytes);
      insert.executeUpdate();
    }
  }
}
