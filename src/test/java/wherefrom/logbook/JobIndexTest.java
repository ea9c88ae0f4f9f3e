package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.OpenJob;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigParts;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.shelf.Shelf;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

/** The indexes say what the logbooks say, or nothing. */
class JobIndexTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-01T10:00:00Z"), ZoneOffset.UTC);

  @TempDir Path shop;
  private int engines = 39;
  private FileShelf shelf;
  private Path job;

  @BeforeEach
  void begin() {
    shelf = new FileShelf(shop, CLOCK, () -> ++engines);
    job = job("Launch \\ find\r\n\tGröße");
  }

  private Path job(String name) {
    try (OpenJob open =
        shelf.create(
            new Shelf.NewJob(
                name, ReadyLayouts.all().get(0), PartKind.alwaysOn(), UnitSystem.METRIC))) {
      return open.folder();
    }
  }

  private void work() {
    try (OpenJob open = shelf.open(job)) {
      open.record(new NoteAdded(1, "a\nnote"));
    }
  }

  private List<Shelf.Entry> anew() throws IOException {
    Files.deleteIfExists(job.resolve(JobIndex.FILE));
    return shelf.list();
  }

  @Test
  void theIndexSaysWhatTheLogbookSays() throws IOException {
    List<Shelf.Entry> read = shelf.list();
    assertThat(job.resolve(JobIndex.FILE)).exists();
    assertThat(shelf.list()).isEqualTo(read);
    assertThat(read.get(0).resume()).isPresent();
    for (int step = 0; step < 3; step++) {
      work();
      List<Shelf.Entry> listed = shelf.list();
      assertThat(listed.get(0).resume().orElseThrow().sequence()).isEqualTo(2 + step);
      assertThat(listed).isEqualTo(anew()).isEqualTo(shelf.list());
    }
  }

  /** The small drawings of the list know them, however the list was read. */
  @Test
  void theIndexSaysWhichHeadsAreOff() throws IOException {
    try (OpenJob open = shelf.open(job)) {
      BigParts parts = new BigParts(open);
      parts.nameUsual();
      BagBook.of(open.state()).bigParts().stream()
          .filter(part -> part.part().name().kind() == BigPartKind.HEAD)
          .forEach(part -> parts.off(part.number(), "for the test"));
    }
    List<Shelf.Entry> read = anew();
    assertThat(read.get(0).resume().orElseThrow().standing().carriers().all())
        .isNotEmpty()
        .noneMatch(head -> head.part().name().kind() == BigPartKind.HEAD && head.isOn());
    assertThat(shelf.list()).as("from the index").isEqualTo(read);
  }

  /** Whatever is done to the logbook, what is listed is what is read. */
  @Test
  void theIndexIsNeverTrustedOverTheLogbook() throws IOException {
    work();
    work();
    shelf.list();
    Path file = job.resolve(LogFiles.name(1));
    byte[] whole = Files.readAllBytes(file);
    FileTime time = Files.getLastModifiedTime(file);
    byte[] index = Files.readAllBytes(job.resolve(JobIndex.FILE));
    for (int length : new int[] {whole.length - 1, whole.length - 60, whole.length - 400}) {
      Files.write(file, java.util.Arrays.copyOf(whole, length));
      isListedAsItIs(index);
    }
    byte[] changed = whole.clone();
    changed[whole.length - 20] ^= 1;
    Files.write(file, changed);
    Files.setLastModifiedTime(file, time);
    isListedAsItIs(index);
    Files.write(file, whole);
    Files.write(job.resolve(LogFiles.name(2)), new byte[] {'x'});
    isListedAsItIs(index);
  }

  private void isListedAsItIs(byte[] index) throws IOException {
    Files.write(job.resolve(JobIndex.FILE), index);
    List<Shelf.Entry> listed = shelf.list();
    assertThat(listed).isEqualTo(anew());
  }

  @Test
  void aDamagedIndexIsReadAsNone() throws IOException {
    List<Shelf.Entry> read = shelf.list();
    Path index = job.resolve(JobIndex.FILE);
    byte[] whole = Files.readAllBytes(index);
    Random random = new Random(9);
    for (int round = 0; round < 300; round++) {
      byte[] bad = whole.clone();
      bad[random.nextInt(bad.length)] ^= (byte) (1 << random.nextInt(8));
      Files.write(index, round % 3 == 0 ? java.util.Arrays.copyOf(whole, round) : bad);
      assertThat(shelf.list()).isEqualTo(read);
    }
  }

  @Test
  void anotherProgramsIndexDoesNotCount() throws IOException {
    JobIndex older = new JobIndex(job, CLOCK, "older");
    Optional<Shelf.Entry> read = older.find();
    byte[] kept = Files.readAllBytes(job.resolve(JobIndex.FILE));
    assertThat(new JobIndex(job, CLOCK, "newer").find()).isEqualTo(read);
    assertThat(Files.readAllBytes(job.resolve(JobIndex.FILE))).isNotEqualTo(kept);
  }

  @Test
  void aJobThatCannotBeReadIsListedWithItsTroubleTwice() throws IOException {
    Files.writeString(job.resolve(LogFiles.name(1)), "junk\njunk\njunk\n");
    Shelf.Entry first = shelf.list().get(0);
    assertThat(first.trouble()).isNotEmpty();
    assertThat(first.resume()).isEmpty();
    assertThat(shelf.list()).containsExactly(first);
  }

  @Test
  void anEngineIsNamedByItsOwnLogbookWhereverTheHintPoints() throws IOException {
    int launch = engine(job);
    Path second = job("Second");
    int other = engine(second);
    assertThat(shelf.find(other)).contains("Second");
    assertThat(shop.resolve(EngineFolders.FILE)).exists();
    assertThat(shelf.find(launch)).contains("Launch \\ find\r\n\tGröße".strip());
    assertThat(shelf.find(launch - 1)).isEmpty();
    Files.move(job, shop.resolve("aside"));
    Files.move(second, job);
    Files.move(shop.resolve("aside"), second);
    assertThat(shelf.find(other)).contains("Second");
    assertThat(shelf.find(launch)).get().asString().startsWith("Launch");
    Path third = job("Third");
    int latest = engine(third);
    assertThat(shelf.find(latest)).contains("Third");
    Files.move(third.resolve(LogFiles.name(1)), third.resolve("gone"));
    assertThat(shelf.find(latest)).isEmpty();
    Files.writeString(shop.resolve(EngineFolders.FILE), "junk");
    assertThat(shelf.find(other)).contains("Second");
  }

  private static int engine(Path job) throws IOException {
    return Openings.get(job).engine();
  }

  @Test
  void linesComeBackAsTheyWere() {
    List<String> texts = List.of("", "a\nb", "\\n", "\\", "\r\n", "Größe 部品", "");
    byte[] sealed = SealedLines.seal(texts);
    assertThat(SealedLines.find(sealed)).contains(texts);
    sealed[2] ^= 1;
    assertThat(SealedLines.find(sealed)).isEmpty();
    assertThat(SealedLines.find(new byte[0])).isEmpty();
  }

  @Test
  void timesAreReadAsTheGeneralWayReadsThem() {
    Random random = new Random(3);
    for (int round = 0; round < 20_000; round++) {
      long second = random.nextLong() % 60_000_000_000L;
      Instant time = Instant.ofEpochSecond(second, random.nextInt(4) == 0 ? 0 : random.nextInt());
      assertThat(Times.parse(time.toString())).isEqualTo(time);
    }
    for (String text :
        List.of(
            "2026-02-30T00:00:00Z",
            "2026-03-01T12:60:00Z",
            "2026-03-01T12:00:00",
            "2026-03-01 12:00:00Z",
            "x026-03-01T12:00:00Z",
            "",
            "Z")) {
      assertThat(throwsDateTime(() -> Times.parse(text))).as(text).isTrue();
      assertThat(throwsDateTime(() -> Instant.parse(text))).as(text).isTrue();
    }
    assertThat(Times.parse("2016-12-31T23:59:60Z"))
        .isEqualTo(Instant.parse("2016-12-31T23:59:60Z"));
    assertThat(Times.parse("2016-12-31T24:00:00Z"))
        .isEqualTo(Instant.parse("2016-12-31T24:00:00Z"));
  }

  private static boolean throwsDateTime(Runnable deed) {
    try {
      deed.run();
      return false;
    } catch (java.time.DateTimeException e) {
      return true;
    }
  }
}
