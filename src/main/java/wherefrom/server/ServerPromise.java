package wherefrom.server;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** Whether what a server says is written is on its disk, whatever happens to its power. */
final class ServerPromise {
  /** Its settings that must not be off. That of the commit is told to each connection, too. */
  private static final String OFF =
      "select name from pg_settings where setting = 'off'"
          + " and name in ('fsync', 'full_page_writes', 'synchronous_commit') order by name";

  private ServerPromise() {}

  /** A sentence where the server is set to promise nothing; empty where it keeps what it says. */
  static String findBroken(Connection connection) throws SQLException {
    List<String> off = new ArrayList<>();
    try (PreparedStatement select = connection.prepareStatement(OFF);
        ResultSet found = select.executeQuery()) {
      while (found.next()) {
        off.add(found.getString(1));
      }
    }
    return off.isEmpty()
        ? ""
        : "The shared server can lose steps in a power cut. On it, turn on "
            + String.join(" and ", off)
            + ".";
  }
}
