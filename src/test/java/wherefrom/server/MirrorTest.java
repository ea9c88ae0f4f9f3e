package wherefrom.server;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.By;
import wherefrom.job.LogbookException;
import wherefrom.job.shelf.Shelf;
import wherefrom.logbook.FileShelf;
import wherefrom.logbook.LogLines;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

/** What a server says never leads out of the mirror's folder, and is what then lies there. */
class MirrorTest {
  @TempDir Path folder;
  private final Database database = new Database(TestServer.empty(), Map.of());

  @AfterEach
  void end() {
    database.close();
  }

  private Mirror mirror() {
    return new Mirror(database, folder.resolve("cache").resolve("shop"));
  }

  private Shelf shelf() {
    FileShelf copies = new FileShelf(mirror().folder(), Clock.systemUTC(), () -> 7);
    return new ServerShelf(database, mirror(), copies, copies, Clock.systemUTC(), By.FIRST);
  }

  private static Shelf.NewJob begun(String name) {
    return new Shelf.NewJob(
        name, ReadyLayouts.find("v8-odd-even").orElseThrow(), PartKind.alwaysOn(), UnitSystem.INCH);
  }

  private void rename(String to) throws SQLException {
    database.once(
        connection -> {
          try (PreparedStatement update =
              connection.prepareStatement("update job set name = ? where name = 'launch'")) {
            update.setString(1, to);
            return update.executeUpdate();
          }
        });
  }

  private List<Path> all() throws IOException {
    try (Stream<Path> inside = Files.walk(folder)) {
      return inside.sorted().toList();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "..",
        ".",
        "../../stolen",
        "a/../../../stolen",
        "/tmp/stolen",
        "..\\..\\stolen",
        "C:stolen",
        "launch/photos",
        ".hidden",
        "nul",
        "con.txt",
        "launch.",
        " launch",
        "a\u0001b",
        "layouts"
      })
  void aNameThatLeadsElsewhereIsFollowedNowhere(String name) throws Exception {
    ServerTroubleTest.begun(database);
    rename(name);
    Files.createDirectories(mirror().folder());
    List<Path> before = all();
    assertThat(mirror().list()).isEmpty();
    mirror().refresh(0);
    assertThat(shelf().list()).isEmpty();
    assertThat(all()).isEqualTo(before);
    assertThatThrownBy(() -> mirror().folder(name)).isInstanceOf(LogbookException.class);
    assertThatThrownBy(() -> mirror().make(new Mirror.Held(1, name, 7)))
        .isInstanceOf(LogbookException.class);
    assertThat(all()).isEqualTo(before);
  }

  @ParameterizedTest
  @ValueSource(strings = {"..", ".", "../..", "a/..", "", "/", "nul", ".hidden"})
  void noJobIsBegunUnderSuchAName(String typed) throws IOException {
    List<Path> before = all();
    assertThatThrownBy(() -> shelf().createIn(Path.of(typed), begun("Launch V8")))
        .isInstanceOf(LogbookException.class)
        .hasMessageContaining("Choose a plain name.");
    assertThat(mirror().list()).isEmpty();
    assertThat(all()).isEqualTo(before);
  }

  @Test
  void aFolderThatIsTypedWithItsPathIsTakenByItsName() {
    shelf().createIn(folder.resolve("away").resolve("launch"), begun("Launch V8")).close();
    assertThat(mirror().list()).containsOnlyKeys("launch");
    assertThat(mirror().folder("launch")).isDirectory();
    assertThat(folder.resolve("away")).doesNotExist();
  }

  @Test
  void twoJobsDifferByMoreThanCapitals() {
    shelf().createIn(Path.of("launch"), begun("Launch V8")).close();
    assertThatThrownBy(() -> shelf().createIn(Path.of("LAUNCH"), begun("Launch V8")))
        .isInstanceOf(LogbookException.class)
        .hasMessageContaining("has a job LAUNCH already");
  }

  private Path mirrored() throws IOException {
    Mirror.Held held = mirror().get(Path.of("launch"));
    mirror().refresh(held);
    return mirror().folder("launch").resolve("logbook-0001.jsonl");
  }

  @Test
  void aFileOfTheSameLengthThatIsAnotherIsBroughtAnew() throws IOException {
    ServerTroubleTest.begun(database);
    Path file = mirrored();
    byte[] whole = Files.readAllBytes(file);
    byte[] other = whole.clone();
    other[other.length / 2] ^= 1;
    Files.write(file, other);
    assertThat(mirrored()).hasBinaryContent(whole);
  }

  @Test
  void aFileThatTheServerDoesNotHaveGoes() throws IOException {
    ServerTroubleTest.begun(database);
    Path stale = mirrored().resolveSibling("logbook-0002.jsonl");
    Files.writeString(stale, "left from before");
    Path named = mirrored();
    assertThat(stale).doesNotExist();
    assertThat(LogLines.of(named.getParent())).hasSize(1);
  }

  /** A row that was damaged on the server shows in a check though it was sound when it came. */
  @Test
  void whatWasDamagedOnTheServerIsNotCoveredByWhatLiesHere() throws Exception {
    ServerTroubleTest.begun(database);
    byte[] whole = Files.readAllBytes(mirrored());
    database.once(
        connection -> {
          try (PreparedStatement update =
              connection.prepareStatement("alter table entry disable trigger all")) {
            update.execute();
          }
          try (PreparedStatement update =
              connection.prepareStatement("update entry set line = set_byte(line, 40, 65)")) {
            return update.executeUpdate();
          }
        });
    assertThat(Files.readAllBytes(mirrored())).hasSize(whole.length).isNotEqualTo(whole);
    assertThat(LogLines.of(mirrored().getParent())).as("no line of it counts").isEmpty();
  }

  @Test
  void aPhotographOfNoSuchNameIsNotWritten() throws Exception {
    int id = ServerTroubleTest.begun(database);
    database.once(
        connection -> {
          NewRows.addPhotograph(connection, id, "../../../stolen.png", new byte[] {1});
          return id;
        });
    Path job = mirrored().getParent();
    List<Path> before = all();
    new ServerPhotos(database, mirror()).fetchAll(job);
    assertThat(all()).isEqualTo(before);
  }
}
