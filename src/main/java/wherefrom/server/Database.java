package wherefrom.server;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
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
  /**
   * How long what is written is sent anew, in milliseconds. The last sending begins within that
   * time and may itself wait for a connection and for the answer, {@code CONNECT_S} and {@code
   * ANSWER_S} at most: so it is said after about ten seconds that the server is out of reach.
   */
  static final int PATIENCE_MS = 4_000;

  private static final int AGAIN_MS = 100;

  /** The first version of PostgreSQL whose tables and functions are asked for here. */
  private static final int OLDEST = 15;

  /** Its libraries tell each step, on standard error too. Kept, or what is set is forgotten. */
  private static final List<Logger> QUIET =
      Stream.of("com.zaxxer.hikari", "org.flywaydb", "org.postgresql")
          .map(Logger::getLogger)
          .toList();

  static {
    QUIET.forEach(logger -> logger.setLevel(Level.OFF));
  }

  /**
   * Told to each connection: a server that is set to forget is not let do so, and a bench whose
   * machine lost its power is free again after a minute.
   */
  private static final String OPTIONS =
      "-c search_path="
          + Tables.SCHEMA
          + " -c synchronous_commit=on"
          + " -c tcp_keepalives_idle=30 -c tcp_keepalives_interval=10 -c tcp_keepalives_count=3";

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
    // Encoded, or a name with a question mark in it would set what the driver does.
    String database = URLEncoder.encode(address.database(), StandardCharsets.UTF_8);
    return "jdbc:postgresql://" + address.host() + ":" + address.port() + "/" + database;
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
    PGProperty.OPTIONS.set(properties, OPTIONS);
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

  private synchronized HikariDataSource pool() throws SQLException {
    if (pool.isEmpty()) {
      HikariDataSource opened = opened();
      try (Connection first = opened.getConnection()) {
        requireNewEnough(address, first.getMetaData().getDatabaseMajorVersion());
        Tables.prepare(opened);
      } catch (SQLException | RuntimeException e) {
        opened.close();
        throw e;
      }
      pool = Optional.of(opened);
    }
    return pool.get();
  }

  static void requireNewEnough(ServerAddress address, int version) {
    if (version < OLDEST) {
      throw new LogbookException(
          "The server "
              + address.host()
              + " runs PostgreSQL "
              + version
              + ". Version "
              + OLDEST
              + " or later is needed: bring the server up to it.");
    }
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
    } catch (LogbookException e) {
      throw e;
    } catch (RuntimeException e) {
      throw new SQLException(String.valueOf(e.getMessage()), e);
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
      throw ServerTrouble.asking(address, e);
    }
  }

  /**
   * Writes something that counts once however often it is sent: it is sent anew until the server
   * has said that it is there, or that it cannot be, or {@link #PATIENCE_MS} are over, or the
   * thread is told to end.
   *
   * @throws UnsentException where nobody knows whether it is written
   * @throws LogbookException where it is not
   */
  <T> T sendUntilHeard(Work<T> work) {
    long until = System.nanoTime() + PATIENCE_MS * 1_000_000L;
    boolean unheard = false;
    while (true) {
      try {
        return once(work);
      } catch (SQLException e) {
        ServerTrouble trouble = ServerTrouble.of(e);
        unheard |= trouble.isUnheard();
        if (!trouble.isPassing() || System.nanoTime() > until || !Pause.took(AGAIN_MS)) {
          throw ServerTrouble.sending(address, e, unheard);
        }
      }
    }
  }

  @Override
  public synchronized void close() {
    pool.ifPresent(HikariDataSource::close);
    pool = Optional.empty();
  }
}
