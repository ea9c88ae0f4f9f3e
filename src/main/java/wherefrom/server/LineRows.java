package wherefrom.server;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wherefrom.logbook.LogLines;

/** The rows of entries, as statements. */
final class LineRows {
  /** Which act of which opening of the job wrote an entry. */
  record Sender(UUID sitting, long act) {}

  /** A row as it lies there. */
  record Row(long sequence, Sender sender, LogLines.Line line) {}

  private static final String NEWER =
      "select sequence, sitting, act, headers, line from entry"
          + " where job = ? and sequence > ? order by sequence";

  /**
   * One row at most, only behind the last, and only from whoever holds the bench: what others wrote
   * since, or that another program took the bench, makes it none.
   */
  private static final String ADD =
      "insert into entry (job, sequence, sitting, act, headers, line)"
          + " select ?, ?, ?, ?, ?, ?"
          + " where (select coalesce(max(sequence), 0) from entry where job = ?) = ?"
          + " and exists (select 1 from bench where job = ? and bench = ? and sitting = ?)"
          + " on conflict do nothing";

  private LineRows() {}

  /** The rows behind a sequence, oldest first. */
  static List<Row> newer(Connection connection, int job, long sequence) throws SQLException {
    try (PreparedStatement select = connection.prepareStatement(NEWER)) {
      select.setInt(1, job);
      select.setLong(2, sequence);
      List<Row> rows = new ArrayList<>();
      try (ResultSet found = select.executeQuery()) {
        while (found.next()) {
          rows.add(row(found));
        }
      }
      return rows;
    }
  }

  private static Row row(ResultSet found) throws SQLException {
    Sender sender = new Sender(found.getObject(2, UUID.class), found.getLong(3));
    LogLines.Line line = new LogLines.Line(found.getBytes(4), found.getBytes(5));
    return new Row(found.getLong(1), sender, line);
  }

  /**
   * Adds a row where its sequence is the next and its sender holds the bench.
   *
   * @return whether it was added; once this is said, it is kept
   */
  static boolean add(Connection connection, int job, int bench, Row row) throws SQLException {
    try (PreparedStatement insert = connection.prepareStatement(ADD)) {
      insert.setInt(1, job);
      insert.setLong(2, row.sequence());
      insert.setObject(3, row.sender().sitting());
      insert.setLong(4, row.sender().act());
      insert.setBytes(5, row.line().headers());
      insert.setBytes(6, row.line().line());
      insert.setInt(7, job);
      insert.setLong(8, row.sequence() - 1);
      insert.setInt(9, job);
      insert.setInt(10, bench);
      insert.setObject(11, row.sender().sitting());
      return insert.executeUpdate() == 1;
    }
  }

  /** A number that no other opening has. */
  static UUID sitting(Connection connection) throws SQLException {
    try (PreparedStatement select = connection.prepareStatement("select gen_random_uuid()");
        ResultSet found = select.executeQuery()) {
      found.next();
      return found.getObject(1, UUID.class);
    }
  }

  /** The number of the job of a name; empty where there is none. */
  static Optional<Integer> findJob(Connection connection, String name) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement("select id from job where name = ?")) {
      select.setString(1, name);
      try (ResultSet found = select.executeQuery()) {
        return found.next() ? Optional.of(found.getInt(1)) : Optional.empty();
      }
    }
  }
}
