package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.engine.ReadyLayouts;
import wherefrom.files.Stopping;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.ports.Backups.Copied;
import wherefrom.job.ports.SecondCopies;
import wherefrom.job.shelf.Shelf;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

/** What is damaged is copied, said, and never put over what is sound. */
class DamagedCopiesTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-03-01T10:00:00Z"), ZoneOffset.UTC);
  private static final byte[] PICTURE =
      java.util.HexFormat.of()
          .parseHex("89504e470d0a1a0a0000000d49484452" + "0000000049454e44ae426082");

  @TempDir Path folder;
  private final BackupFolder backups = new BackupFolder(any -> true);
  private final PhotoFiles photos = new PhotoFiles();
  private FileShelf shelf;
  private Path job;
  private Path stick;
  private Path file;

  @BeforeEach
  void begin() throws IOException {
    shelf = new FileShelf(folder.resolve("shop"), CLOCK, () -> 41);
    stick = Files.createDirectory(folder.resolve("stick"));
    try (OpenJob open =
        shelf.create(
            new Shelf.NewJob(
                "Launch", ReadyLayouts.all().get(0), PartKind.alwaysOn(), UnitSystem.METRIC))) {
      job = open.folder();
    }
    file = job.resolve(LogFiles.name(1));
    work(6);
  }

  private void work(int steps) {
    try (OpenJob open = shelf.open(job)) {
      for (int step = 0; step < steps; step++) {
        open.record(new NoteAdded(1, "step " + step));
      }
    }
  }

  private void damage(int fromEnd) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    bytes[bytes.length - fromEnd] ^= 2;
    Files.write(file, bytes);
  }

  @Test
  void damageBehindTheOlderCopyGoesToAFolderOfItsOwn() throws IOException {
    assertThat(backups.copy(job, stick).upTo()).isEqualTo(7);
    byte[] sound = Files.readAllBytes(stick.resolve("launch").resolve(LogFiles.name(1)));
    work(6);
    damage(400);
    byte[] damaged = Files.readAllBytes(file);
    Copied copied = backups.copy(job, stick);
    assertThat(copied.folder()).isEqualTo(stick.resolve("launch-damaged"));
    assertThat(copied.damage())
        .singleElement()
        .asString()
        .contains("The logbook is damaged at logbook-0001.jsonl, line ");
    assertThat(copied.folder().resolve(LogFiles.name(1))).hasBinaryContent(damaged);
    assertThat(stick.resolve("launch").resolve(LogFiles.name(1))).hasBinaryContent(sound);
    assertThat(backups.copy(job, stick).folder()).as("once").isEqualTo(copied.folder());
    damage(420);
    assertThat(backups.copy(job, stick).folder())
        .as("another damage")
        .isEqualTo(stick.resolve("launch-damaged-2"));
    assertThat(copied.folder().resolve(LogFiles.name(1))).hasBinaryContent(damaged);
  }

  @Test
  void aDamagedFirstEntryIsCopiedToo() throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    bytes[400] ^= 2;
    Files.write(file, bytes);
    Copied copied = backups.copy(job, stick);
    assertThat(copied.damage()).isNotEmpty();
    assertThat(copied.folder().resolve(LogFiles.name(1))).hasBinaryContent(bytes);
  }

  @Test
  void theWindowSaysThatTheJobIsDamagedAndWhereItsCopyIs() throws IOException {
    damage(400);
    SecondCopies.Outcome outcome = new SecondCopies(backups, CLOCK).copy(job, stick);
    assertThat(outcome).isInstanceOf(SecondCopies.Outcome.Failed.class);
    assertThat(((SecondCopies.Outcome.Failed) outcome).sentence())
        .contains("The logbook is damaged", "It was copied as it is to " + stick, "as it was.");
  }

  private String photograph() throws IOException {
    Path picture = Files.write(folder.resolve("p.png"), PICTURE);
    String name = photos.add(job, picture);
    try (OpenJob open = shelf.open(job)) {
      open.record(new PhotoAdded(1, name, ""));
    }
    return name;
  }

  @Test
  void aDamagedPhotographIsSaidAndTheSoundOneOnTheStickStays() throws IOException {
    String name = photograph();
    backups.copy(job, stick);
    Files.write(photos.locate(job, name), new byte[] {1, 2, 3});
    work(1);
    Copied copied = backups.copy(job, stick);
    assertThat(copied.folder()).as("the logbook is sound").isEqualTo(stick.resolve("launch"));
    assertThat(copied.upTo()).isEqualTo(9);
    assertThat(copied.damage()).singleElement().asString().contains(name + " is damaged");
    assertThat(photos.locate(stick.resolve("launch"), name)).hasBinaryContent(PICTURE);
  }

  @Test
  void aDamagedPhotographOnTheStickIsMendedByTheSoundOne() throws IOException {
    String name = photograph();
    backups.copy(job, stick);
    Path copy = photos.locate(stick.resolve("launch"), name);
    Files.write(copy, new byte[] {1, 2, 3});
    assertThat(backups.copy(job, stick).files()).isEqualTo(1);
    assertThat(copy).hasBinaryContent(PICTURE);
  }

  @Test
  void aDamagedPhotographIsMendedByAddingItAgain() throws IOException {
    String name = photograph();
    Files.write(photos.locate(job, name), new byte[] {1, 2, 3});
    assertThat(photos.add(job, folder.resolve("p.png"))).isEqualTo(name);
    assertThat(photos.locate(job, name)).hasBinaryContent(PICTURE);
  }

  @Test
  void aCopyThatIsStoppedHoldsWholeFilesAndGoesOnLater() throws Exception {
    String name = photograph();
    assertThatThrownBy(() -> Stopping.after(2, () -> backups.copy(job, stick)))
        .isInstanceOf(CancellationException.class);
    Path copy = stick.resolve("launch");
    assertThat(copy.resolve(LogFiles.name(1))).hasSameBinaryContentAs(file);
    assertThat(photos.locate(copy, name)).doesNotExist();
    assertThat(backups.copy(job, stick).files()).isEqualTo(1);
    assertThat(photos.locate(copy, name)).hasBinaryContent(PICTURE);
  }

  @Test
  void whatWasNeverBegunIsNotCopied() throws IOException {
    Path dead = Files.createDirectory(folder.resolve("dead"));
    Files.write(
        dead.resolve(LogFiles.name(1)), Sums.ended(new LogHeader(LogHeader.VERSION, "", 1).line()));
    assertThatThrownBy(() -> backups.copy(dead, stick))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("No job was started in");
    assertThat(stick).isEmptyDirectory();
  }

  @Test
  void theCopyIsSafeToPullOutOnlyWhereTheSystemSaysSo() throws IOException {
    assertThat(new BackupFolder(any -> false).copy(job, stick).settled()).isFalse();
    assertThat(new BackupFolder(any -> true).copy(job, stick).settled()).isTrue();
    assertThat(new SystemSettling().settle(folder.resolve("not there"))).isFalse();
  }

  @Test
  void readingBackSeesEveryOtherByte() throws IOException {
    byte[] bytes = new byte[300_000];
    new java.util.Random(4).nextBytes(bytes);
    Path copy = Files.write(folder.resolve("copy"), bytes);
    assertThat(ReadBack.holds(copy, bytes)).isTrue();
    for (int at : new int[] {0, 4095, 4096, 262_144, 299_999}) {
      byte[] other = bytes.clone();
      other[at] ^= 1;
      assertThat(ReadBack.holds(copy, other)).as("byte " + at).isFalse();
    }
    assertThat(ReadBack.holds(copy, java.util.Arrays.copyOf(bytes, 299_999))).isFalse();
    assertThat(ReadBack.holds(copy, java.util.Arrays.copyOf(bytes, 300_001))).isFalse();
    assertThat(ReadBack.holds(Files.createFile(folder.resolve("none")), new byte[0])).isTrue();
  }
}
