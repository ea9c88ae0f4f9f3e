package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The samples of the page on the shared server do what they say, with a server that lets in whom
 * the page's own line lets in. What they install and set up there is done by other means: a test
 * installs nothing.
 */
class SharedServerSamplesIT {
  private static final Path PAGE = Path.of("src", "site", "markdown", "shared-server.md");
  private static final Pattern RULE = Pattern.compile("(?m)^host +shop +wherefrom +\\S+ +\\S+$");
  private static final String PASSWORD = "PASSWORD";

  @TempDir Path folder;

  @Test
  void runInOrderWithThePasswordOfThePage() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "bash runs the samples");
    PageSamples samples = PageSamples.ofShell(PAGE);
    assertThat(samples.count()).isGreaterThanOrEqualTo(3);
    try (EmbeddedPostgres server = server()) {
      FinishedProgram program = FinishedProgram.in(folder);
      Path bench = Files.createDirectory(folder.resolve("bench"));
      String script = atHome(samples.script(program), server.getPort());
      Path file = Files.writeString(folder.resolve("samples.sh"), script);
      String said = program.run(List.of("/bin/bash", file.toString()), bench);
      assertThat(said).contains("Launch V8", "Spare six");
      assertThat(logbook(bench.resolve("back.wherefrom.zip")))
          .as("a job comes back byte for byte")
          .isEqualTo(logbook(bench.resolve("spare.wherefrom.zip")))
          .isNotEmpty();
    }
  }

  /** The person's home is the test's, and the bench's server is the one that runs here. */
  private String atHome(String script, int port) throws IOException {
    Path home = Files.createDirectory(folder.resolve("person"));
    return "export HOME='"
        + home
        + "' PGPASSFILE='"
        + home.resolve(".pgpass")
        + "'\n"
        + "unset PGPASSWORD\n"
        + script
            .replace("@bench-pc/", "@127.0.0.1:" + port + "/")
            .replace("bench-pc:5432", "127.0.0.1:" + port);
  }

  private EmbeddedPostgres server() throws IOException, SQLException {
    Path data = folder.resolve("data");
    EmbeddedPostgres server =
        EmbeddedPostgres.builder().setDataDirectory(data).setServerConfig("fsync", "on").start();
    run(server, "create role wherefrom login password '" + PASSWORD + "'");
    run(server, "create database shop owner wherefrom");
    Matcher rule = RULE.matcher(Files.readString(PAGE));
    assertThat(rule.find()).as("the page's line of pg_hba.conf").isTrue();
    Files.writeString(
        data.resolve("pg_hba.conf"),
        rule.group().replaceFirst("\\d+\\.\\S+/\\d+", "127.0.0.1/32") + "\n");
    run(server, "select pg_reload_conf()");
    requireThatItAsksForThePassword(server);
    return server;
  }

  private static void run(EmbeddedPostgres server, String sql) throws SQLException {
    try (Connection connection = server.getPostgresDatabase().getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  /** The server takes its rules in by itself, soon after it was told to. */
  private static void requireThatItAsksForThePassword(EmbeddedPostgres server) {
    String url = "jdbc:postgresql://127.0.0.1:" + server.getPort() + "/shop?user=wherefrom";
    for (int tries = 0; tries < 1_000; tries++) {
      try (Connection connection = DriverManager.getConnection(url)) {
        assertThat(connection).isNotNull();
      } catch (SQLException e) {
        return;
      }
    }
    throw new AssertionError("the server lets everybody in");
  }

  private static Map<String, String> logbook(Path zip) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (ZipFile read = new ZipFile(zip.toFile())) {
      for (ZipEntry entry : Collections.list(read.entries())) {
        String name = entry.getName();
        if (name.endsWith(".jsonl")) {
          files.put(
              name.substring(name.lastIndexOf('/') + 1),
              new String(read.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
        }
      }
    }
    return files;
  }
}
