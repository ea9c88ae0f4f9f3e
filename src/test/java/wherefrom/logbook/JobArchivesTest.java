package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.engine.ReadyLayouts;
import wherefrom.files.Stopping;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.shelf.Shelf;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

class JobArchivesTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-01T10:00:00Z"), ZoneOffset.UTC);
  private static final String LOGBOOK = LogFiles.name(1);

  @TempDir Path folder;
  private final JobArchives archives = new JobArchives();
  private Path job;
  private Path zip;
  private Path shelf;

  @BeforeEach
  void exportAJob() throws IOException {
    Path first = folder.resolve("first");
    try (OpenJob open =
        new FileShelf(first, CLOCK, () -> 4_217_093)
            .create(
                new Shelf.NewJob(
                    "Old launch",
                    ReadyLayouts.find("inline-4").orElseThrow(),
                    Set.copyOf(PartKind.alwaysOn()),
                    UnitSystem.INCH))) {
      open.record(new NoteAdded(0, "found under hay, Größe 部品"));
      job = open.folder();
    }
    zip = folder.resolve("job.zip");
    archives.export(job, zip);
    shelf = Files.createDirectory(folder.resolve("second"));
  }

  private static Map<String, byte[]> entries(Path zip) throws IOException {
    Map<String, byte[]> entries = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        entries.put(entry.getName(), in.readAllBytes());
      }
    }
    return entries;
  }

  private Path zipped(Map<String, byte[]> entries) throws IOException {
    Path file = folder.resolve("other.zip");
    try (OutputStream out = Files.newOutputStream(file);
        ZipOutputStream made = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        made.putNextEntry(new ZipEntry(entry.getKey()));
        made.write(entry.getValue());
        made.closeEntry();
      }
    }
    return file;
  }

  private static Map<String, String> contents(Path folder) throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(each -> !each.equals(folder)).toList()) {
        String text =
            Files.isDirectory(file) ? "" : Files.readString(file, StandardCharsets.ISO_8859_1);
        contents.put(folder.relativize(file).toString(), text);
      }
    }
    return contents;
  }

  private void isRefused(Path file, String... words) throws IOException {
    Map<String, String> before = contents(folder);
    assertThatThrownBy(() -> archives.restore(file, shelf))
        .isInstanceOf(IOException.class)
        .hasMessageContainingAll(words)
        .message()
        .matches("(?s).*[.]")
        .doesNotContain("Exception", "null");
    assertThat(contents(folder)).isEqualTo(before);
  }

  @Test
  void aJobComesBackByteForByte() throws IOException {
    Path back = archives.restore(zip, shelf);
    Map<String, String> original = contents(job);
    original.remove(JobLock.FILE);
    assertThat(contents(back)).isEqualTo(original);
    try (OpenJob open = new FileShelf(shelf, CLOCK, () -> 1).open(back)) {
      assertThat(open.state().name()).isEqualTo("Old launch");
    }
  }

  @Test
  void theSameJobGivesTheSameFile() throws IOException {
    Path again = folder.resolve("again.zip");
    archives.export(job, again);
    assertThat(Files.readAllBytes(again)).isEqualTo(Files.readAllBytes(zip));
  }

  @Test
  void aFileThatIsThereIsNeverWrittenOver() throws IOException {
    byte[] before = Files.readAllBytes(zip);
    assertThatThrownBy(() -> archives.export(job, zip)).hasMessageContaining("exists already");
    assertThat(Files.readAllBytes(zip)).isEqualTo(before);
    Path beside = Files.writeString(folder.resolve("plain"), "x").resolve("in.zip");
    assertThatThrownBy(() -> archives.export(job, beside))
        .isInstanceOf(IOException.class)
        .hasMessageEndingWith(".");
  }

  @Test
  void noFileAndNoZipAreSaid() throws IOException {
    isRefused(folder.resolve("none.zip"), "There is no file");
    isRefused(folder, "There is no file");
    isRefused(Files.createFile(folder.resolve("empty.zip")), "was not imported");
    isRefused(Files.writeString(folder.resolve("text.zip"), "hello"), "was not imported");
  }

  @Test
  void aFileThatBrokeOffIsRefusedWhereverItEnds() throws IOException {
    byte[] whole = Files.readAllBytes(zip);
    Path cut = folder.resolve("cut.zip");
    for (int length = 0; length < whole.length; length += 37) {
      Files.write(cut, Arrays.copyOf(whole, length));
      isRefused(cut, "was not imported");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../evil.txt",
        "photos/../../evil.jpg",
        "/etc/evil",
        "..\\evil.txt",
        "C:\\evil.txt",
        "photos/",
        "logbook.lock",
        "notes.txt"
      })
  void aNameThatNoJobHasIsRefused(String name) throws IOException {
    Map<String, byte[]> entries = entries(zip);
    entries.put(name, new byte[] {1});
    isRefused(zipped(entries), "was not imported", name);
    Map<String, byte[]> listed = entries(zip);
    byte[] log = listed.get(LOGBOOK);
    Manifest manifest =
        new Manifest(
            "Old launch",
            4_217_093,
            List.of(
                new Manifest.Item(LOGBOOK, log.length, Sums.digest(log)),
                new Manifest.Item(name, 1, Sums.digest(new byte[] {1}))));
    listed.put(Manifest.FILE, manifest.json());
    listed.put(name, new byte[] {1});
    isRefused(zipped(listed), "was not imported", name);
  }

  @Test
  void aMissingOrChangedFileIsRefused() throws IOException {
    Map<String, byte[]> without = entries(zip);
    without.remove(LOGBOOK);
    isRefused(zipped(without), "it holds no " + LOGBOOK);
    Map<String, byte[]> bare = entries(zip);
    bare.remove(Manifest.FILE);
    isRefused(zipped(bare), "it holds no " + Manifest.FILE);
    Map<String, byte[]> changed = entries(zip);
    changed.get(LOGBOOK)[100] ^= 1;
    isRefused(zipped(changed), LOGBOOK + " is damaged");
    Map<String, byte[]> longer = entries(zip);
    longer.put(LOGBOOK, Arrays.copyOf(longer.get(LOGBOOK), 100_000));
    isRefused(zipped(longer), LOGBOOK + " is larger than it should be");
    Map<String, byte[]> none = entries(zip);
    none.put(Manifest.FILE, "[]".getBytes(StandardCharsets.UTF_8));
    isRefused(zipped(none), "was not imported");
  }

  @Test
  void aNewerVersionIsSaid() throws IOException {
    Map<String, byte[]> entries = entries(zip);
    String manifest = new String(entries.get(Manifest.FILE), StandardCharsets.UTF_8);
    entries.put(
        Manifest.FILE,
        manifest.replace("\"version\":1", "\"version\":2").getBytes(StandardCharsets.UTF_8));
    isRefused(zipped(entries), "newer version of Wherefrom");
  }

  @Test
  void aJobThatIsThereIsNotBroughtBackTwice() throws IOException {
    Path back = archives.restore(zip, shelf);
    isRefused(zip, "the same job is already there", back.toString());
    assertThatThrownBy(() -> archives.restore(zip, folder.resolve("first")))
        .hasMessageContaining("the same job is already there");
  }

  @Test
  void theJobOfAFileIsFoundOnItsShelf() throws IOException {
    assertThat(archives.findThere(zip, folder.resolve("nowhere"))).isEmpty();
    assertThat(archives.findThere(zip, shelf)).isEmpty();
    Path back = archives.restore(zip, shelf);
    assertThat(archives.findThere(zip, shelf)).contains(back);
    assertThatThrownBy(() -> archives.findThere(folder.resolve("none.zip"), shelf))
        .hasMessageContaining("There is no file");
  }

  @Test
  void aShelfThatWasMadeForWhatDoesNotComeIsGoneAgain() throws IOException {
    Map<String, byte[]> changed = entries(zip);
    changed.get(LOGBOOK)[100] ^= 1;
    shelf = folder.resolve("new/deep/down");
    isRefused(zipped(changed), LOGBOOK + " is damaged");
    assertThat(folder.resolve("new")).doesNotExist();
    Path kept = Files.writeString(folder.resolve("kept"), "x");
    shelf = Files.createDirectory(folder.resolve("empty before"));
    isRefused(zipped(changed), LOGBOOK + " is damaged");
    assertThat(shelf).isEmptyDirectory();
    assertThat(kept).exists();
  }

  @Test
  void whatIsStoppedLeavesNothing() throws Exception {
    Path again = folder.resolve("again.zip");
    Path other = folder.resolve("third/shop");
    Map<String, String> before = contents(folder);
    assertThatThrownBy(() -> Stopping.after(1, () -> archives.export(job, again)))
        .isInstanceOf(CancellationException.class);
    assertThatThrownBy(() -> Stopping.after(1, () -> archives.restore(zip, other)))
        .isInstanceOf(CancellationException.class);
    assertThat(contents(folder)).isEqualTo(before);
  }

  @Test
  void aShelfThatIsAFileIsSaid() throws IOException {
    shelf = Files.writeString(folder.resolve("file"), "x");
    isRefused(zip, "was not imported");
  }
}
