package wherefrom.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.net.UnknownHostException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.job.LogbookException;
import wherefrom.job.UnsentException;
import wherefrom.job.settings.ServerAddress;

/** What a person is told where a server does not do as it is asked: by kind, and no secret. */
class ServerTroubleWordsTest {
  private static final String SECRET = "correct horse battery";

  private final ServerAddress address = TestServer.empty();

  private static LogbookException asked(ServerAddress address, Map<String, String> environment) {
    try (Database database = new Database(address, environment)) {
      return catchThrowableOfType(
          LogbookException.class, () -> database.ask(connection -> "answered"));
    }
  }

  private ServerAddress of(String user, String database) {
    return new ServerAddress("localhost", address.port(), database, user);
  }

  private void run(String sql) throws SQLException {
    try (Database database = new Database(address, Map.of())) {
      database.once(
          connection -> {
            try (Statement statement = connection.createStatement()) {
              return statement.execute(sql);
            }
          });
    }
  }

  @Test
  void aDatabaseThatIsNotThere() {
    assertThat(asked(of("postgres", "nowhere"), Map.of()))
        .isNotInstanceOf(UnsentException.class)
        .hasMessage(
            "The server localhost has no database nowhere. Check the name, or make it with"
                + " createdb.");
  }

  /** A question mark begins what the driver is set to, in an address that it reads. */
  @Test
  void aDatabasesNameSetsNothing() {
    assertThat(asked(of("postgres", "nowhere?user=stranger"), Map.of()))
        .hasMessageStartingWith("The server localhost has no database nowhere?user=stranger.");
  }

  @Test
  void aNameThatTheServerDoesNotKnow() {
    assertThat(asked(of("stranger", address.database()), Map.of()))
        .hasMessageStartingWith("The server localhost does not know your name there,");
  }

  @Test
  void aNameThatMayNotMakeTables() throws SQLException {
    run("create role poor" + address.database() + " login");
    assertThat(asked(of("poor" + address.database(), address.database()), Map.of()))
        .hasMessageStartingWith(
            "Your name on the server localhost may not do this in the database");
  }

  @Test
  void aServerThatTakesNoMore() throws SQLException {
    String user = "late" + address.database();
    run("create role " + user + " login connection limit 0");
    assertThat(asked(of(user, address.database()), Map.of()))
        .isNotInstanceOf(UnsentException.class)
        .hasMessageStartingWith("The shared server localhost takes no more connections.");
  }

  @Test
  void aServerForReadingOnly() throws SQLException {
    run("alter database " + address.database() + " set default_transaction_read_only = on");
    try (Database database = new Database(address, Map.of())) {
      LogbookException told =
          catchThrowableOfType(
              LogbookException.class,
              () -> new NewRows(database).add("launch", 1, List.of(), Map.of()));
      assertThat(told)
          .hasMessageStartingWith("The shared server localhost is set for reading only,")
          .hasMessageEndingWith("Nothing was written.");
    }
  }

  @Test
  void whatATriggerOfTheServerRaisesIsToldByItsKind() throws SQLException {
    run(
        "create function full_disk() returns trigger language plpgsql as $$ begin"
            + " raise exception '"
            + SECRET
            + "' using errcode = '53100'; end $$");
    run("create trigger full_disk before insert on job for each row execute function full_disk()");
    try (Database database = new Database(address, Map.of())) {
      LogbookException told =
          catchThrowableOfType(
              LogbookException.class,
              () -> new NewRows(database).add("launch", 1, List.of(), Map.of()));
      assertThat(told)
          .isNotInstanceOf(UnsentException.class)
          .hasMessage(
              "The disk of the shared server localhost is full. Make room on it, then do it again."
                  + " Nothing was written.");
    }
  }

  @Test
  void aPortThatNobodyListensAt() {
    assertThat(asked(new ServerAddress("localhost", 1, "shop", "ann"), Map.of()))
        .isInstanceOf(UnsentException.class)
        .hasMessage("No connection to the shared server localhost. Nothing is shown as done.");
  }

  @Test
  void passwords(@TempDir Path folder) throws IOException, InterruptedException, SQLException {
    try (Mortal server = new Mortal(folder)) {
      ServerAddress here = server.address(server.port());
      try (Database database = new Database(here, Map.of())) {
        database.once(
            connection -> {
              try (Statement statement = connection.createStatement()) {
                return statement.execute("create role ann login password '" + SECRET + "'");
              }
            });
      }
      Files.writeString(
          folder.resolve("data").resolve("pg_hba.conf"),
          "host all ann 127.0.0.1/32 scram-sha-256\nhost all ann ::1/128 scram-sha-256\n");
      server.killAndStart();
      ServerAddress ann = new ServerAddress("localhost", server.port(), "postgres", "ann");
      assertThat(untilItRuns(ann, Map.of()))
          .hasMessage(
              "The server localhost asks for a password. Put it into ~/.pgpass or PGPASSWORD.");
      LogbookException wrong = untilItRuns(ann, Map.of("PGPASSWORD", SECRET + "!"));
      assertThat(wrong)
          .hasMessage(
              "The server localhost does not let this machine in. Check name and password.");
      assertThat(wrong).hasStackTraceContaining("password").message().doesNotContain(SECRET);
      assertThat(untilItRuns(here, Map.of()))
          .hasMessageStartingWith("The server localhost does not know your name there, or no line");
    }
  }

  private static LogbookException untilItRuns(ServerAddress address, Map<String, String> words) {
    LogbookException told = asked(address, words);
    for (int tries = 0; tries < 100 && told instanceof UnsentException; tries++) {
      told = asked(address, words);
    }
    return told;
  }

  @Test
  void anOldServer() {
    assertThat(
            catchThrowableOfType(
                LogbookException.class, () -> Database.requireNewEnough(address, 14)))
        .hasMessage(
            "The server localhost runs PostgreSQL 14. Version 15 or later is needed: bring the"
                + " server up to it.");
    Database.requireNewEnough(address, 15);
  }

  /** By the SQLSTATEs of PostgreSQL's manual, appendix A. */
  @Test
  void eachKindHasItsOwnSentenceAndNoneRepeatsTheServersWords() {
    Map<String, ServerTrouble> kinds =
        Map.ofEntries(
            Map.entry("08006", ServerTrouble.AWAY),
            Map.entry("57P01", ServerTrouble.STOPPED),
            Map.entry("57P03", ServerTrouble.STOPPED),
            Map.entry("57014", ServerTrouble.TOOK_TOO_LONG),
            Map.entry("28P01", ServerTrouble.WRONG_PASSWORD),
            Map.entry("28000", ServerTrouble.NOT_LET_IN),
            Map.entry("08004", ServerTrouble.NO_PASSWORD),
            Map.entry("3D000", ServerTrouble.NO_DATABASE),
            Map.entry("42501", ServerTrouble.NO_RIGHTS),
            Map.entry("25006", ServerTrouble.FOR_READING_ONLY),
            Map.entry("53100", ServerTrouble.DISK_FULL),
            Map.entry("53200", ServerTrouble.SHORT),
            Map.entry("53300", ServerTrouble.TOO_MANY),
            Map.entry("40001", ServerTrouble.AT_ONCE),
            Map.entry("40P01", ServerTrouble.AT_ONCE),
            Map.entry("42P01", ServerTrouble.OTHER_TABLES),
            Map.entry("58030", ServerTrouble.DAMAGED),
            Map.entry("XX001", ServerTrouble.DAMAGED),
            Map.entry("22021", ServerTrouble.OTHER));
    kinds.forEach(
        (state, kind) -> {
          SQLException cause =
              new SQLException("outer", new IllegalStateException(new SQLException(SECRET, state)));
          assertThat(ServerTrouble.of(cause)).as(state).isEqualTo(kind);
          assertThat(ServerTrouble.sending(address, cause, false).getMessage())
              .as(state)
              .doesNotContain(SECRET, "{", "outer");
        });
    assertThat(kinds.values())
        .extracting(kind -> kind.sentence(address, new SQLException("")))
        .as("a sentence each")
        .hasSize(kinds.size())
        .satisfies(all -> assertThat(all.stream().distinct()).hasSize(distinct(kinds)));
    assertThat(ServerTrouble.of(new SQLException("", "08001", new UnknownHostException(SECRET))))
        .isEqualTo(ServerTrouble.NO_SUCH_HOST);
    assertThat(ServerTrouble.of(new SQLException("nothing is known of it")))
        .isEqualTo(ServerTrouble.AWAY);
  }

  private static int distinct(Map<String, ServerTrouble> kinds) {
    return (int) kinds.values().stream().distinct().count();
  }
}
