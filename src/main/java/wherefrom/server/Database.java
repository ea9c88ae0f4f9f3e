package wherefrom.server;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.postgresql.Driver;
import org.postgresql.PGProperty;
import wherefrom.job.LogbookException;
import wherefrom.job.UnsentException;
import wherefrom.job.settings.ServerAddress;

/**
 * The connections to a shop's database. The password comes from {@code PGPASSWORD} or the person's
 * pgpass file, and is neither kept nor logged.
 */
final class Database implements AutoCloseable {
  /** What an act waits for at most; then it is said that there is no connection. */
  static final int PATIENCE_MS = 4_000;

  /** Its libraries tell each step, on standard error too. Kept, or what is set is forgotten. */
  private static final List<Logger> QUIET =
      Stream.of("com.zaxxer.hikari", "org.flywaydb", "org.postgresql")
          .map(Logger::getLogger)
          .toList();

  static {
    QUIET.forEach(logger -> logger.setLevel(Level.OFF));
  }

  private static final int CONNECT_S = 2;
  private static final int ANSWER_S = 4;
  private static final int CONNECTIONS = 4;
  private static final String PASSWORD = "PGPASSWORD";

  /** What is done with a connection. */
  @FunctionalInterface
  interface Work<T> {
    T on(Connection connection) throws SQLException;
  }

  private final ServerAddress address;
  private final Map<String, String> environment;
  private Optional<HikariDataSource> pool = Optional.empty();

  Database(ServerAddress address, Map<String, String> environment) {
    this.address = address;
    this.environment = Map.copyOf(environment);
  }

  ServerAddress address() {
    return address;
  }

  private String url() {
    return "jdbc:postgresql://" + address.host() + ":" + address.port() + "/" + address.database();
  }

  private Properties properties(int answerS) {
    Properties properties = new Properties();
    if (!address.user().isEmpty()) {
      PGProperty.USER.set(properties, address.user());
    }
    Optional.ofNullable(environment.get(PASSWORD))
        .ifPresent(password -> PGProperty.PASSWORD.set(properties, password));
    PGProperty.CONNECT_TIMEOUT.set(properties, CONNECT_S);
    PGProperty.LOGIN_TIMEOUT.set(properties, CONNECT_S);
    PGProperty.SOCKET_TIMEOUT.set(properties, answerS);
    PGProperty.TCP_KEEP_ALIVE.set(properties, true);
    PGProperty.APPLICATION_NAME.set(properties, "Wherefrom");
    // Told to each connection: a server that is set to forget is not let do so.
    PGProperty.OPTIONS.set(
        properties, "-c search_path=" + Tables.SCHEMA + " -c synchronous_commit=on");
    return properties;
  }

  /** A connection of its own, to listen on, for which nobody waits. */
  Connection connectAlone() throws SQLException {
    Connection connection = new Driver().connect(url(), properties(ANSWER_S));
    if (connection == null) {
      throw new SQLException("no such kind of server");
    }
    return connection;
  }

  private synchronized HikariDataSource pool() {
    if (pool.isEmpty()) {
      HikariDataSource opened = opened();
      try {
        Tables.prepare(opened);
      } catch (RuntimeException e) {
        opened.close();
        throw e;
      }
      pool = Optional.of(opened);
    }
    return pool.get();
  }

  private HikariDataSource opened() {
    HikariConfig config = new HikariConfig();
    config.setJdbcUrl(url());
    config.setDriverClassName(Driver.class.getName());
    config.setDataSourceProperties(properties(ANSWER_S));
    config.setMaximumPoolSize(CONNECTIONS);
    config.setMinimumIdle(1);
    config.setConnectionTimeout(CONNECT_S * 1_000L);
    config.setValidationTimeout(1_000);
    config.setInitializationFailTimeout(CONNECT_S * 1_000L);
    config.setPoolName("shop");
    return new HikariDataSource(config);
  }

  /**
   * Does something with a connection, once.
   *
   * @throws SQLException as the server or the way to it says it
   */
  <T> T once(Work<T> work) throws SQLException {
    HikariDataSource from;
    try {
      from = pool();
    } catch (RuntimeException e) {
      throw new SQLException(String.valueOf(e.getMessage()), "08001", e);
    }
    try (Connection connection = from.getConnection()) {
      return work.on(connection);
    }
  }

  /**
   * Asks the server something that changes nothing.
   *
   * @throws LogbookException with a sentence where it does not answer
   */
  <T> T ask(Work<T> work) {
    try {
      return once(work);
    } catch (SQLException e) {
      throw away(e);
    }
  }

  /** What to say where the server was not reached, or did not do as it was asked. */
  LogbookException away(SQLException cause) {
    if (isWrongPassword(cause)) {
      return new LogbookException(
          "The server "
              + address.host()
              + " does not let this machine in. Check name and password.",
          cause);
    }
    return new UnsentException(
        "No connection to the shared server " + address.host() + ". Nothing is shown as done.",
        cause);
  }

  private static boolean isWrongPassword(SQLException cause) {
    for (Throwable each = cause; each != null; each = each.getCause()) {
      if (each instanceof SQLException sql && String.valueOf(sql.getSQLState()).startsWith("28")) {
        return true;
      }
    }
    return false;
  }

  @Override
  public synchronized void close() {
    pool.ifPresent(HikariDataSource::close);
    pool = Optional.empty();
  }
}
