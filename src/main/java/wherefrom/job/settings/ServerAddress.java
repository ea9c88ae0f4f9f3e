package wherefrom.job.settings;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Optional;

/**
 * Where a shared server is. No password stands in it: the system's own places hold that.
 *
 * @param host its name or number
 * @param port from 1 to 65535
 * @param user empty for the name by which the person is known to this machine
 */
public record ServerAddress(String host, int port, String database, String user) {
  private static final String SCHEME = "postgresql";
  private static final int USUAL_PORT = 5432;
  private static final int MOST_PORT = 65_535;

  /** Whether a text is meant as a server's address, right or wrong. */
  public static boolean isMeant(String text) {
    return text.startsWith(SCHEME + ":");
  }

  /**
   * Reads {@code postgresql://user@host:port/database}; user and port may be left out.
   *
   * @throws IllegalArgumentException with a sentence where it is no such address, or holds a
   *     password
   */
  public static ServerAddress read(String text) {
    URI uri = uri(text.strip());
    String user = Optional.ofNullable(uri.getUserInfo()).orElse("");
    if (user.contains(":") || uri.getQuery() != null) {
      throw new IllegalArgumentException(
          "No password belongs in the address. Keep it in ~/.pgpass or in PGPASSWORD.");
    }
    String database = Optional.ofNullable(uri.getPath()).orElse("").replaceFirst("^/", "");
    if (uri.getHost() == null || database.isEmpty() || database.contains("/")) {
      throw wrong();
    }
    int port = uri.getPort() < 0 ? USUAL_PORT : uri.getPort();
    if (port < 1 || port > MOST_PORT) {
      throw wrong();
    }
    return new ServerAddress(uri.getHost(), port, database, user);
  }

  private static URI uri(String text) {
    try {
      URI uri = new URI(text);
      if (SCHEME.equals(uri.getScheme())) {
        return uri;
      }
    } catch (URISyntaxException e) {
      // Its message repeats the text, which may hold a password.
    }
    throw wrong();
  }

  private static IllegalArgumentException wrong() {
    return new IllegalArgumentException(
        "Write the server's address like postgresql://name@host/database.");
  }

  /** As it is typed and kept. */
  public String text() {
    String at = user.isEmpty() ? "" : user + "@";
    String of = port == USUAL_PORT ? "" : ":" + port;
    return SCHEME + "://" + at + host + of + "/" + database;
  }

  @Override
  public String toString() {
    return text();
  }
}
