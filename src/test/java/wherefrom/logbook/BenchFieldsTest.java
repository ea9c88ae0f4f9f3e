package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.By;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.handling.Handling;
import wherefrom.job.shelf.Shelf;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

/** Who wrote a line: said where it is not bench 1 without a name, and read again. */
class BenchFieldsTest {
  @TempDir Path folder;

  private List<LoggedEntry> written;

  private void work() {
    Shelf shelf = new FileShelf(folder, Clock.systemUTC(), () -> 7);
    Path place = folder.resolve("job");
    Shelf.NewJob begun =
        new Shelf.NewJob(
            "Launch",
            ReadyLayouts.find("v8-odd-even").orElseThrow(),
            PartKind.alwaysOn(),
            UnitSystem.INCH);
    try (OpenJob job = shelf.createIn(place, begun)) {
      new Handling(job).note(1, "one");
      OpenJob phone = job.beside(new By(2, ""));
      OpenJob other = job.beside(new By(2, "Ann"));
      new Handling(phone).note(1, "two");
      new Handling(other).note(1, "three");
      phone.close();
      assertThat(job.catchUp()).isTrue();
      new Handling(job).note(1, "four");
      written = job.history();
    }
  }

  @Test
  void theBytesOfASingleBenchAreAsTheyWere() throws IOException {
    work();
    List<String> lines = Files.readAllLines(folder.resolve("job").resolve(LogFiles.name(1)));
    assertThat(lines.get(2)).doesNotContain("\"bench\"").doesNotContain("\"who\"");
    assertThat(lines.get(3)).contains("\"bench\":2,\"type\":\"note-added\"");
    assertThat(lines.get(4)).contains("\"bench\":3,\"who\":\"Ann\",\"type\":\"note-added\"");
    assertThat(lines.get(5)).doesNotContain("\"bench\"");
  }

  @Test
  void whoWroteIsReadAgainByBothReaders() throws IOException {
    work();
    Path job = folder.resolve("job");
    assertThat(LogbookFile.read(job).entries()).isEqualTo(written);
    assertThat(written).extracting(logged -> logged.by().bench()).containsExactly(1, 1, 2, 3, 1);
    byte[] file = Files.readAllBytes(job.resolve(LogFiles.name(1)));
    Pieces pieces = new Pieces(file);
    pieces.next();
    for (LoggedEntry logged : written) {
      LineSlice line = pieces.next();
      assertThat(LogLine.read(line, logged.sequence(), java.util.Optional.empty()))
          .isEqualTo(logged);
    }
  }
}
