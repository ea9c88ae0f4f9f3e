package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.files.FullDisk;
import wherefrom.job.print.SheetPrinter;
import wherefrom.logbook.JobArchives;
import wherefrom.logbook.PhotoFiles;
import wherefrom.print.PdfSheetPrinter;

/** Folders that cannot be written, a full disk, archives that broke off: said, and nothing lost. */
class DiskTroubleTest {
  private static final int ROOM = 500;

  @TempDir Path folder;
  private Shop shop;
  private String job;
  private Path picture;

  @BeforeEach
  void begin() throws IOException {
    shop = new Shop(folder.resolve("shop"));
    job = shop.begin("engine");
    picture = folder.resolve("nose.png");
    BufferedImage noise = new BufferedImage(60, 60, BufferedImage.TYPE_INT_RGB);
    for (int at = 0; at < 3600; at++) {
      noise.setRGB(at % 60, at / 60, at * 7919 * 31);
    }
    ImageIO.write(noise, "png", picture.toFile());
    assertThat(Files.size(picture)).isGreaterThan(ROOM);
  }

  /** The same shop on a disk that is full. */
  private Shop full() {
    return new Shop(
        shop.folder,
        new PhotoFiles(FullDisk.withRoomFor(ROOM)),
        new JobArchives(FullDisk.withRoomFor(ROOM)));
  }

  private void isRefused(Shop.Outcome outcome, String... words) {
    assertThat(outcome.status()).as(outcome.toString()).isEqualTo(2);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err().strip()).contains(words).endsWith(".");
    assertThat(outcome.err()).doesNotContain("Exception", "null", "\tat ");
  }

  private void nothingIsLost(Map<String, String> before) {
    assertThat(Shop.contents(folder)).isEqualTo(before);
    assertThat(shop.right("check", "--job", job).status()).isZero();
  }

  @Test
  void aPhotographThatFindsNoRoomIsSaidAndNotLogged() {
    Map<String, String> before = Shop.contents(folder);
    isRefused(
        full().run("photo", "--job", job, "lobe@3EX", picture.toString()),
        "The photograph could not be kept: the disk is full; make room on it and try again.");
    nothingIsLost(before);
    assertThat(shop.right("photo", "--job", job).out()).isEmpty();
    shop.right("photo", "--job", job, "lobe@3EX", picture.toString());
    assertThat(shop.right("photo", "--job", job, "lobe@3EX").out())
        .startsWith("cylinder 3, exhaust, cam lobe\t");
  }

  /** A printer whose pages cannot be drawn. */
  private static SheetPrinter broken() {
    SheetPrinter real = new PdfSheetPrinter();
    return (SheetPrinter)
        Proxy.newProxyInstance(
            SheetPrinter.class.getClassLoader(),
            new Class<?>[] {SheetPrinter.class},
            (proxy, method, args) -> {
              if (method.getName().equals("save")) {
                throw new IOException("A page could not be drawn.");
              }
              return method.invoke(real, args);
            });
  }

  @Test
  void aSheetThatCannotBeDrawnIsSaidAndTakesNoNumber() {
    Map<String, String> before = Shop.contents(folder);
    String pdf = folder.resolve("sheet.pdf").toString();
    isRefused(
        Shop.printing(shop.folder, broken())
            .run("tags", "--job", job, "--stock", "a4-3x8-63.5x33.9", "--out", pdf),
        "A page could not be drawn.");
    nothingIsLost(before);
  }

  @Test
  void anExportThatFindsNoRoomLeavesNoFile() {
    Map<String, String> before = Shop.contents(folder);
    String zip = folder.resolve("stick").resolve("engine.zip").toString();
    isRefused(
        full().run("export", "--job", job, "--out", zip),
        "The job could not be exported: the disk is full; make room on it and try again.");
    nothingIsLost(before);
    shop.right("export", "--job", job, "--out", zip);
  }

  @Test
  void anImportThatFindsNoRoomLeavesNoHalfJob() {
    String zip = folder.resolve("engine.zip").toString();
    shop.right("export", "--job", job, "--out", zip);
    String other = folder.resolve("other").toString();
    Map<String, String> before = Shop.contents(folder);
    isRefused(
        full().run("import", zip, "--folder", other), "the disk is full", "Nothing was changed.");
    nothingIsLost(before);
    assertThat(folder.resolve("other")).doesNotExist();
  }

  @Test
  void anArchiveThatBrokeOffOrWasChangedIsSaidAndNothingIsImported() throws IOException {
    String zip = folder.resolve("engine.zip").toString();
    shop.right("export", "--job", job, "--out", zip);
    byte[] whole = Files.readAllBytes(Path.of(zip));
    byte[] changed = whole.clone();
    changed[whole.length / 2] ^= 0x10;
    String other = folder.resolve("other").toString();
    for (byte[] bad :
        new byte[][] {
          {},
          Arrays.copyOf(whole, 30),
          Arrays.copyOf(whole, whole.length * 2 / 3),
          Arrays.copyOf(whole, whole.length - 1),
          changed,
          "no archive".getBytes("UTF-8")
        }) {
      Path cut = Files.write(folder.resolve("cut.zip"), bad);
      Map<String, String> before = Shop.contents(folder);
      isRefused(
          shop.run("import", cut.toString(), "--folder", other),
          "cut.zip was not imported: ",
          "Nothing was changed.");
      nothingIsLost(before);
    }
    shop.right("import", zip, "--folder", other);
  }

  @Test
  void aShopThatCannotBeWrittenIsSaid() throws IOException {
    Path file = Files.writeString(folder.resolve("a-file"), "kept");
    Map<String, String> before = Shop.contents(folder);
    String inside = file.resolve("new").toString();
    isRefused(
        shop.run("job", "new", "--folder", inside, "--layout", "v8-odd-even", "--name", "x"),
        "a-file");
    isRefused(
        shop.run("export", "--job", job, "--out", file.resolve("e.zip").toString()), "a-file");
    isRefused(
        shop.run(
            "tags",
            "--job",
            job,
            "--stock",
            "a4-3x8-63.5x33.9",
            "--out",
            file.resolve("t.pdf").toString()),
        "a-file");
    isRefused(
        shop.run("record", "--job", job, "--out", file.resolve("r.pdf").toString()), "a-file");
    nothingIsLost(before);
  }
}
