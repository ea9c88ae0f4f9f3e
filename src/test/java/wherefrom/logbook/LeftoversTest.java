package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.settings.FileSettings;

/** Of what kills leave only ours goes, and only what is old. */
class LeftoversTest {
  private static final Instant NOW = Instant.parse("2026-03-01T10:00:00Z");

  @TempDir Path shop;

  private Path old(Path file) throws IOException {
    Files.createDirectories(file.getParent());
    if (!Files.exists(file)) {
      Files.writeString(file, "x");
    }
    return aged(file, Duration.ofHours(25));
  }

  private static Path aged(Path path, Duration age) throws IOException {
    return Files.setLastModifiedTime(path, FileTime.from(NOW.minus(age)));
  }

  private void tidy() {
    new FileShelf(shop, Clock.fixed(NOW, ZoneOffset.UTC), () -> 1).tidy();
  }

  @Test
  void oldOnesOfOursGo() throws IOException {
    old(shop.resolve("job").resolve(LogFiles.name(1)));
    List<Path> files =
        List.of(
            shop.resolve("part1234567890123456789.tmp"),
            shop.resolve("part4711-1.tmp"),
            shop.resolve(".wherefrom-4711-1.part"),
            shop.resolve(".tags.pdf.part"),
            shop.resolve("job/part12345678.tmp"),
            shop.resolve("job/photos/part12345678.tmp"),
            shop.resolve("job").resolve(LogFiles.PART),
            shop.resolve("layouts/part12345678.tmp"));
    for (Path file : files) {
      old(file);
    }
    Path imported = shop.resolve(".import1234567");
    old(imported.resolve(LogFiles.name(1)));
    old(imported.resolve("photos/part12345678.tmp"));
    aged(imported.resolve("photos"), Duration.ofHours(25));
    aged(imported, Duration.ofHours(25));
    Path demo = shop.resolve(".demo-4711-1");
    old(demo.resolve("files.txt"));
    aged(demo, Duration.ofHours(25));
    tidy();
    assertThat(files).allSatisfy(file -> assertThat(file).doesNotExist());
    assertThat(imported).doesNotExist();
    assertThat(demo).doesNotExist();
    assertThat(shop.resolve("job").resolve(LogFiles.name(1))).exists();
  }

  @Test
  void whatIsYoungOrNotOursStays() throws IOException {
    old(shop.resolve("job").resolve(LogFiles.name(1)));
    Path young = Files.writeString(shop.resolve("part1234567890.tmp"), "x");
    aged(young, Duration.ofHours(23));
    Path import1 = shop.resolve(".import1234567");
    old(import1.resolve(LogFiles.name(1)));
    aged(import1, Duration.ofHours(1));
    Path import2 = shop.resolve(".import7654321");
    old(import2.resolve("letter.txt"));
    aged(import2, Duration.ofHours(25));
    List<Path> others =
        List.of(
            old(shop.resolve("part1.tmp.txt")),
            old(shop.resolve("parts.tmp")),
            old(shop.resolve("part-list.tmp")),
            old(shop.resolve("drawing.part")),
            old(shop.resolve(".tags.txt.part")),
            old(shop.resolve("job/notes.txt")),
            old(shop.resolve("letters/part1234567890.tmp")),
            old(shop.resolve(".importance/letter.txt")));
    tidy();
    assertThat(others).allSatisfy(file -> assertThat(file).exists());
    assertThat(young).exists();
    assertThat(import1.resolve(LogFiles.name(1))).exists();
    assertThat(import2.resolve("letter.txt")).exists();
  }

  /** A USB drive and the settings' folder hold other people's files, too. */
  @Test
  void besideTheSettingsAndAmongTheCopiesOnlyOurOwnGoes() throws IOException {
    Path home = shop.resolve("home");
    Path drive = shop.resolve("drive");
    for (Path each : List.of(home, drive)) {
      old(each.resolve("part4711-1.tmp"));
      old(each.resolve(".wherefrom-4711-1.part"));
      old(each.resolve("part-4711.tmp"));
      old(each.resolve(".letter.pdf.part"));
      old(each.resolve("holiday/part4711-1.tmp"));
      aged(Files.writeString(each.resolve("part4711-2.tmp"), "x"), Duration.ofHours(23));
    }
    old(drive.resolve("job").resolve(LogFiles.name(1)));
    old(drive.resolve("job/part4711-1.tmp"));
    old(drive.resolve("job/photos/part4711-1.tmp"));
    old(drive.resolve("job/notes.txt"));
    new FileSettings(home, shop).tidy(NOW);
    new BackupFolder(any -> true).tidy(drive, NOW);
    new BackupFolder(any -> true).tidy(shop.resolve("not there"), NOW);
    List<String> others =
        List.of(".letter.pdf.part", "holiday/part4711-1.tmp", "part-4711.tmp", "part4711-2.tmp");
    assertThat(files(home)).containsExactlyElementsOf(others);
    List<String> kept = new ArrayList<>(others);
    kept.addAll(List.of("job/logbook-0001.jsonl", "job/notes.txt"));
    assertThat(files(drive)).containsExactlyInAnyOrderElementsOf(kept);
  }

  private static List<String> files(Path folder) throws IOException {
    try (Stream<Path> walk = Files.walk(folder)) {
      return walk.filter(Files::isRegularFile)
          .map(file -> folder.relativize(file).toString())
          .sorted()
          .toList();
    }
  }

  @Test
  void aLinkIsNotFollowed() throws IOException {
    Path letters = shop.resolve("letters");
    Path letter = old(letters.resolve("part1234567890.tmp"));
    Files.createSymbolicLink(shop.resolve(".import1234567"), letters);
    Files.createSymbolicLink(shop.resolve("part1234567890.tmp"), letter);
    tidy();
    assertThat(letter).exists();
  }
}
