package wherefrom.server;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;
import wherefrom.job.settings.ServerAddress;

/** A real server, started once for all tests; each takes a database of its own. */
public final class TestServer {
  private static final AtomicInteger NUMBER = new AtomicInteger();

  private TestServer() {}

  private static final class Started {
    private static final EmbeddedPostgres SERVER = start();

    private static EmbeddedPostgres start() {
      try {
        return EmbeddedPostgres.builder().setServerConfig("fsync", "on").start();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** The address of a new, empty database. */
  public static ServerAddress empty() {
    String name = "shop" + NUMBER.incrementAndGet();
    try (Connection connection = Started.SERVER.getPostgresDatabase().getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute("create database " + name);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
    return new ServerAddress("localhost", Started.SERVER.getPort(), name, "postgres");
  }
}
