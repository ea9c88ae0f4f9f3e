package wherefrom.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.engine.ReadyLayouts;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.ports.CheckFinding;
import wherefrom.job.shelf.Shelf;
import wherefrom.parts.PartKind;
import wherefrom.quantity.UnitSystem;

/** Where a photograph was taken does not go out with the job. */
class PlacelessTest {
  @TempDir Path folder;

  private static byte[] jpeg() throws IOException {
    BufferedImage picture = new BufferedImage(24, 16, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 24; x++) {
      picture.setRGB(x, 5, 0x20A0F0);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(picture, "jpg", out);
    return out.toByteArray();
  }

  /** An Exif segment: which way up, and where it points to a latitude. */
  private static byte[] exif(boolean little, boolean place) {
    ByteBuffer tiff =
        ByteBuffer.allocate(64).order(little ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    tiff.put((little ? "II" : "MM").getBytes(StandardCharsets.US_ASCII)).putShort((short) 42);
    tiff.putInt(8).putShort((short) (place ? 2 : 1));
    tiff.putShort((short) 0x0112)
        .putShort((short) 3)
        .putInt(1)
        .putShort((short) 6)
        .putShort((short) 0);
    if (place) {
      tiff.putShort((short) 0x8825).putShort((short) 4).putInt(1).putInt(38);
      tiff.putInt(0);
      tiff.putShort((short) 1).putShort((short) 1).putShort((short) 2).putInt(2);
      tiff.put("N\0\0\0".getBytes(StandardCharsets.US_ASCII)).putInt(0);
    }
    byte[] body = Arrays.copyOf(tiff.array(), 64);
    ByteBuffer segment = ByteBuffer.allocate(4 + 6 + body.length);
    segment.putShort((short) 0xFFE1).putShort((short) (2 + 6 + body.length));
    segment.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(body);
    return segment.array();
  }

  private static byte[] with(byte[] jpeg, byte[] segment) {
    ByteBuffer all = ByteBuffer.allocate(jpeg.length + segment.length);
    return all.put(jpeg, 0, 2).put(segment).put(jpeg, 2, jpeg.length - 2).array();
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void thePositionLeavesAndWhichWayUpStays(boolean little) throws Exception {
    byte[] plain = jpeg();
    byte[] placed = with(plain, exif(little, true));
    assertThat(read(placed).containsDirectoryOfType(GpsDirectory.class)).isTrue();
    byte[] kept = Placeless.of(placed);
    Metadata told = read(kept);
    assertThat(told.containsDirectoryOfType(GpsDirectory.class)).isFalse();
    assertThat(told.getFirstDirectoryOfType(ExifIFD0Directory.class).getInt(0x0112)).isEqualTo(6);
    BufferedImage before = ImageIO.read(new ByteArrayInputStream(plain));
    BufferedImage after = ImageIO.read(new ByteArrayInputStream(kept));
    for (int x = 0; x < 24; x++) {
      assertThat(after.getRGB(x, 5)).isEqualTo(before.getRGB(x, 5));
    }
  }

  private static Metadata read(byte[] bytes) throws Exception {
    return ImageMetadataReader.readMetadata(new ByteArrayInputStream(bytes));
  }

  /** Earlier versions kept the place: the logbook names such a file by the bytes that it had. */
  @Test
  void aDamagedPhotographOfBeforeIsMendedUnderItsName() throws IOException {
    byte[] placed = with(jpeg(), exif(true, true));
    Path picture = Files.write(folder.resolve("placed.jpg"), placed);
    PhotoFiles photos = new PhotoFiles();
    Path job = Files.createDirectories(folder.resolve("job"));
    String before = Sums.digest(placed) + ".jpg";
    Path kept = photos.locate(job, before);
    Files.createDirectories(kept.getParent());
    Files.write(kept, Arrays.copyOf(placed, placed.length / 2));
    assertThat(photos.add(job, picture)).isEqualTo(before);
    assertThat(kept).hasBinaryContent(placed);
    try (var files = Files.list(kept.getParent())) {
      assertThat(files).containsExactly(kept);
    }
  }

  @Test
  void aNewPhotographIsKeptWithoutItsPlaceAsBefore() throws IOException {
    byte[] placed = with(jpeg(), exif(true, true));
    Path picture = Files.write(folder.resolve("placed.jpg"), placed);
    PhotoFiles photos = new PhotoFiles();
    Path job = Files.createDirectories(folder.resolve("job"));
    String name = photos.add(job, picture);
    assertThat(name)
        .isEqualTo(photos.names(picture).iterator().next())
        .isNotEqualTo(Sums.digest(placed) + ".jpg");
    assertThat(photos.locate(job, name)).hasBinaryContent(Placeless.of(placed));
  }

  /**
   * A writer may fill with FF before any marker: what stands behind it is a segment all the same.
   */
  @Test
  void fillingBeforeASegmentHidesNoPosition() throws Exception {
    byte[] plain = jpeg();
    ByteArrayOutputStream filled = new ByteArrayOutputStream();
    filled.write(plain, 0, 2);
    filled.write(0xFF);
    filled.write(0xFF);
    filled.writeBytes(exif(true, true));
    filled.write(plain, 2, plain.length - 2);
    byte[] kept = Placeless.of(filled.toByteArray());
    Metadata read = ImageMetadataReader.readMetadata(new ByteArrayInputStream(kept));
    assertThat(read.getFirstDirectoryOfType(GpsDirectory.class)).isNull();
    assertThat(ImageIO.read(new ByteArrayInputStream(kept))).isNotNull();
  }

  @Test
  void aPictureWithoutAPositionKeepsItsBytes() throws IOException {
    byte[] plain = jpeg();
    assertThat(Placeless.of(plain)).isSameAs(plain);
    byte[] turned = with(plain, exif(true, false));
    assertThat(Placeless.of(turned)).isSameAs(turned);
  }

  @Test
  void wordsThatTellAPositionLeaveToo() throws IOException {
    String words = "http://ns.adobe.com/xap/1.0/\0<x exif:GPSLatitude='1,2N'/>";
    byte[] body = words.getBytes(StandardCharsets.US_ASCII);
    ByteBuffer segment = ByteBuffer.allocate(4 + body.length);
    segment.putShort((short) 0xFFE1).putShort((short) (2 + body.length)).put(body);
    byte[] kept = Placeless.of(with(jpeg(), segment.array()));
    assertThat(new String(kept, StandardCharsets.ISO_8859_1)).doesNotContain("GPS");
    assertThat(kept).isEqualTo(jpeg());
  }

  /** As phones write moving pictures: the still one, then a film that tells a place. */
  @Test
  void whatStandsBehindThePicturesEndLeaves() throws IOException {
    byte[] plain = jpeg();
    byte[] film = "ftypmp4 +52.1234+013.1234/".getBytes(StandardCharsets.US_ASCII);
    byte[] moving = Arrays.copyOf(plain, plain.length + film.length);
    System.arraycopy(film, 0, moving, plain.length, film.length);
    assertThat(Placeless.of(moving)).isEqualTo(plain);
    byte[] twice = Arrays.copyOf(plain, 2 * plain.length);
    System.arraycopy(plain, 0, twice, plain.length, plain.length);
    assertThat(Placeless.of(twice)).isEqualTo(plain);
  }

  private static byte[] png(String type, byte[] told) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(5, 4, BufferedImage.TYPE_INT_RGB), "png", out);
    byte[] plain = out.toByteArray();
    if (type.isEmpty()) {
      return plain;
    }
    java.util.zip.CRC32 sum = new java.util.zip.CRC32();
    sum.update(type.getBytes(StandardCharsets.US_ASCII));
    sum.update(told);
    ByteBuffer all = ByteBuffer.allocate(plain.length + 12 + told.length);
    all.put(plain, 0, 33).putInt(told.length).put(type.getBytes(StandardCharsets.US_ASCII));
    all.put(told).putInt((int) sum.getValue());
    return all.put(plain, 33, plain.length - 33).array();
  }

  @Test
  void aPngTellsNoPositionEither() throws Exception {
    byte[] exif = exif(false, true);
    byte[] placed = png("eXIf", Arrays.copyOfRange(exif, 10, exif.length));
    assertThat(read(placed).containsDirectoryOfType(GpsDirectory.class)).isTrue();
    Metadata told = read(PlacelessPng.of(placed));
    assertThat(told.containsDirectoryOfType(GpsDirectory.class)).isFalse();
    assertThat(told.getFirstDirectoryOfType(ExifIFD0Directory.class).getInt(0x0112)).isEqualTo(6);
    byte[] words = "XML:com.adobe.xmp\0\0\0\0\0GPSLatitude".getBytes(StandardCharsets.US_ASCII);
    assertThat(PlacelessPng.of(png("iTXt", words))).isEqualTo(png("", words));
    byte[] plain = png("", words);
    assertThat(PlacelessPng.of(plain)).isSameAs(plain);
    for (int end = 16; end < placed.length; end += 3) {
      byte[] cut = Arrays.copyOf(placed, end);
      assertThat(PlacelessPng.of(cut)).isSameAs(cut);
    }
  }

  @Test
  void aBrokenPictureIsLeftAsItIs() throws IOException {
    byte[] placed = with(jpeg(), exif(true, true));
    for (int end = 2; end < placed.length; end += 7) {
      byte[] cut = Arrays.copyOf(placed, end);
      assertThat(Placeless.of(cut)).hasSizeLessThanOrEqualTo(cut.length);
    }
  }

  @Test
  void whatIsKeptInTheJobHasNoPosition() throws Exception {
    Path file = Files.write(folder.resolve("a.jpg"), with(jpeg(), exif(false, true)));
    PhotoFiles photos = new PhotoFiles();
    String name = photos.add(folder, file);
    byte[] kept = Files.readAllBytes(photos.locate(folder, name));
    assertThat(read(kept).containsDirectoryOfType(GpsDirectory.class)).isFalse();
    assertThat(PhotoFiles.isWhole(photos.locate(folder, name))).isTrue();
  }

  @Test
  void aPictureAsPhonesWriteItIsSaidWithWhatToDo() throws IOException {
    byte[] heic = "\0\0\0\u0018ftypheic0000".getBytes(StandardCharsets.ISO_8859_1);
    Path file = Files.write(folder.resolve("IMG_1.HEIC"), heic);
    assertThatThrownBy(() -> new PhotoFiles().add(folder, file))
        .hasMessage(
            "IMG_1.HEIC is a HEIC picture. Set the phone's camera to JPEG, or send it as JPEG.");
  }

  /** The sum with which earlier versions named a photograph is that of its bytes with the place. */
  private Path jobOfBefore(String kept, byte[] bytes) throws IOException {
    Clock clock = Clock.fixed(Instant.parse("2026-03-01T10:00:00Z"), ZoneOffset.UTC);
    FileShelf shop = new FileShelf(folder.resolve("shop"), clock, () -> 4_217_093);
    Shelf.NewJob launch =
        new Shelf.NewJob(
            "Old launch",
            ReadyLayouts.find("inline-4").orElseThrow(),
            Set.copyOf(PartKind.alwaysOn()),
            UnitSystem.INCH);
    try (OpenJob open = shop.create(launch)) {
      Path file = new PhotoFiles().locate(open.folder(), kept);
      Files.createDirectories(file.getParent());
      Files.write(file, bytes);
      open.record(new PhotoAdded(0, kept, ""));
      return open.folder();
    }
  }

  private Path exportedAndBack(Path job) throws IOException {
    Path zip = folder.resolve("job.zip");
    new JobArchives().export(job, zip);
    return new JobArchives().restore(zip, folder.resolve("other shop"));
  }

  private static List<String> faults(Path job) {
    return new FileChecks()
        .check(job).stream()
            .filter(finding -> finding.severity() != CheckFinding.Severity.SOUND)
            .map(CheckFinding::sentence)
            .toList();
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aJobOfBeforeGoesOutWithoutPositionsAndComesBackSound(boolean asJpeg) throws Exception {
    byte[] exif = exif(true, true);
    byte[] placed =
        asJpeg ? with(jpeg(), exif) : png("eXIf", Arrays.copyOfRange(exif, 10, exif.length));
    String name = Sums.digest(placed) + (asJpeg ? ".jpg" : ".png");
    Path job = jobOfBefore(name, placed);
    Path back = exportedAndBack(job);
    assertThat(new PhotoFiles().locate(job, name)).hasBinaryContent(placed);
    byte[] came = Files.readAllBytes(new PhotoFiles().locate(back, name));
    assertThat(read(came).containsDirectoryOfType(GpsDirectory.class)).isFalse();
    assertThat(ImageIO.read(new ByteArrayInputStream(came)).getRGB(3, 2))
        .isEqualTo(ImageIO.read(new ByteArrayInputStream(placed)).getRGB(3, 2));
    assertThat(faults(back)).isEmpty();
    Path again = folder.resolve("again.zip");
    new JobArchives().export(back, again);
    assertThat(again).hasSameBinaryContentAs(folder.resolve("job.zip"));
  }

  @Test
  void aChangedBitInWhatWentOutIsSeen() throws IOException {
    byte[] placed = with(jpeg(), exif(true, true));
    String name = Sums.digest(placed) + ".jpg";
    Path back = exportedAndBack(jobOfBefore(name, placed));
    Path came = new PhotoFiles().locate(back, name);
    byte[] sound = Files.readAllBytes(came);
    for (int at = 0; at < sound.length; at++) {
      byte[] changed = sound.clone();
      changed[at] ^= 1;
      assertThat(PhotoFiles.isWhole(came, changed)).as("byte %d", at).isFalse();
    }
  }

  /** What was damaged before it went out does not become sound by going out. */
  @Test
  void aDamagedPhotographGoesOutWithoutItsPositionAndStaysDamaged() throws Exception {
    byte[] placed = with(jpeg(), exif(true, true));
    String other = Sums.digest(jpeg()) + ".jpg";
    Path back = exportedAndBack(jobOfBefore(other, placed));
    byte[] came = Files.readAllBytes(new PhotoFiles().locate(back, other));
    assertThat(read(came).containsDirectoryOfType(GpsDirectory.class)).isFalse();
    assertThat(faults(back)).contains("Photograph " + other + " is damaged.");
  }

  @Test
  void theSamePictureIsKnownInAJobOfBeforeAndInItsCopy() throws IOException {
    byte[] placed = with(jpeg(), exif(true, true));
    String name = Sums.digest(placed) + ".jpg";
    Path back = exportedAndBack(jobOfBefore(name, placed));
    PhotoFiles photos = new PhotoFiles();
    Path phones = Files.write(folder.resolve("phone.jpg"), placed);
    Path exported = photos.locate(back, name);
    assertThat(photos.names(phones)).contains(name);
    assertThat(photos.names(exported)).contains(name);
    assertThat(photos.isThere(back, name)).isTrue();
    assertThat(photos.add(back, phones)).isEqualTo(name);
    Files.delete(exported);
    assertThat(photos.isThere(back, name)).isFalse();
    assertThat(photos.add(back, phones, Set.of(name))).isEqualTo(name);
    assertThat(photos.isThere(back, name)).isTrue();
  }
}
