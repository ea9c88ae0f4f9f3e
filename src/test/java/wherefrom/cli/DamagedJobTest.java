package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Damaged jobs are copied with status 1 and a sentence; a job open for reading takes nothing in.
 */
class DamagedJobTest {
  private static final byte[] PICTURE =
      HexFormat.of().parseHex("89504e470d0a1a0a0000000d49484452" + "0000000049454e44ae426082");

  @TempDir Path folder;
  private Shop shop;
  private String job;
  private Path file;

  @BeforeEach
  void begin() throws IOException {
    shop = new Shop(folder.resolve("shop"));
    job = shop.begin("engine");
    file = Path.of(job).resolve("logbook-0001.jsonl");
    String part = shop.codes(job, "cylinder 3, exhaust, pushrod").tag();
    for (int step = 0; step < 5; step++) {
      shop.right("note", "--job", job, "--text", "step " + step, part);
    }
  }

  private void damage() throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    bytes[bytes.length - 300] ^= 2;
    Files.write(file, bytes);
  }

  private static void saysTheDamage(Shop.Outcome outcome) {
    assertThat(outcome.status()).as(outcome.toString()).isEqualTo(1);
    assertThat(outcome.err())
        .contains("The logbook is damaged at logbook-0001.jsonl, line ")
        .contains("Go on with the copy on the USB drive, or an exported file.");
  }

  @Test
  void aSoundJobIsCopiedAndTheStickCanBePulledOutWhereTheSystemSaysSo() {
    Shop.Outcome outcome =
        shop.right("backup", "--job", job, "--to", folder.resolve("s").toString());
    assertThat(outcome.lines().get(0)).startsWith("Copied to ").endsWith(": files written 1.");
    assertThat(outcome.lines().get(1))
        .isIn(
            "Everything is on it: safe to pull out.",
            "Eject it before you pull it out: this system does not say when all is on it.");
    assertThat(
            shop.right("backup", "--json", "--job", job, "--to", folder.resolve("s").toString())
                .out())
        .contains("\"damage\":[]", "\"safeToPullOut\":", "\"upTo\":6");
  }

  @Test
  void aDamagedJobIsExportedAndImportedWithASentence() throws IOException {
    damage();
    String zip = folder.resolve("engine.zip").toString();
    saysTheDamage(shop.run("export", "--job", job, "--out", zip));
    assertThat(Path.of(zip)).exists();
    saysTheDamage(shop.run("import", zip, "--folder", folder.resolve("other").toString()));
    assertThat(folder.resolve("other/engine/logbook-0001.jsonl")).hasSameBinaryContentAs(file);
  }

  /** The second line says which job it is: without it the folder's name is all there is. */
  @Test
  void aJobWhoseOpeningIsDamagedGoesOutAndComesBackAsItIs() throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    bytes[400] ^= 2;
    Files.write(file, bytes);
    String zip = folder.resolve("engine.zip").toString();
    saysTheDamage(shop.run("export", "--job", job, "--out", zip));
    saysTheDamage(shop.run("export", "--job", job, "--out", "-"));
    saysTheDamage(shop.run("import", zip, "--folder", folder.resolve("other").toString()));
    assertThat(folder.resolve("other/engine/logbook-0001.jsonl")).hasSameBinaryContentAs(file);
    Shop.Outcome list = shop.run("job", "list", "--folder", folder.resolve("other").toString());
    assertThat(list.out() + list.err()).contains("engine", "The logbook is damaged");
  }

  @Test
  void aJobWithADamagedPhotographComesBackAndItIsSaid() throws IOException {
    Path picture = Files.write(folder.resolve("p.png"), PICTURE);
    shop.right("photo", "--job", job, "lobe@3EX", picture.toString());
    Path kept;
    try (Stream<Path> photos = Files.list(Path.of(job).resolve("photos"))) {
      kept = photos.findFirst().orElseThrow();
    }
    Files.write(kept, new byte[] {1, 2, 3});
    String zip = folder.resolve("engine.zip").toString();
    Shop.Outcome out = shop.run("export", "--job", job, "--out", zip);
    Shop.Outcome back = shop.run("import", zip, "--folder", folder.resolve("other").toString());
    for (Shop.Outcome each : List.of(out, back)) {
      assertThat(each.status()).isEqualTo(1);
      assertThat(each.err()).contains("Photograph " + kept.getFileName() + " is damaged.");
    }
    assertThat(folder.resolve("other/engine/photos").resolve(kept.getFileName()))
        .hasBinaryContent(new byte[] {1, 2, 3});
  }

  @Test
  void aDamagedJobIsNeverExportedOverAnOlderFile() throws IOException {
    Path zip = folder.resolve("engine.zip");
    shop.right("export", "--job", job, "--out", zip.toString());
    byte[] sound = Files.readAllBytes(zip);
    shop.right("export", "--job", job, "--out", zip.toString(), "--replace");
    damage();
    Shop.Outcome refused = shop.run("export", "--job", job, "--out", zip.toString(), "--replace");
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err())
        .contains("The logbook is damaged at logbook-0001.jsonl, line ")
        .contains(zip + " may be a sound copy: it stays as it is. Give another name.");
    assertThat(zip).hasBinaryContent(sound);
  }

  @Test
  void aDamagedJobOnStandardOutputIsSaidBesideIt() throws IOException {
    damage();
    Shop.Outcome outcome = shop.run("export", "--job", job, "--out", "-");
    saysTheDamage(outcome);
    assertThat(outcome.out()).startsWith("PK").doesNotContain("damaged");
  }

  @Test
  void aDamagedJobIsBackedUpBesideTheSoundCopy() throws IOException {
    Path stick = folder.resolve("stick");
    shop.right("backup", "--job", job, "--to", stick.toString());
    byte[] sound = Files.readAllBytes(stick.resolve("engine/logbook-0001.jsonl"));
    damage();
    saysTheDamage(shop.run("backup", "--job", job, "--to", stick.toString()));
    assertThat(stick.resolve("engine/logbook-0001.jsonl")).hasBinaryContent(sound);
    assertThat(stick.resolve("engine-damaged/logbook-0001.jsonl")).hasSameBinaryContentAs(file);
  }

  @Test
  void aJobOpenForReadingOnlyTakesNoPhotograph() throws IOException {
    damage();
    Path picture = Files.write(folder.resolve("p.png"), PICTURE);
    Shop.Outcome outcome = shop.run("photo", "--job", job, "lobe@3EX", picture.toString());
    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err()).contains("Nothing was written. ");
    assertThat(Path.of(job).resolve("photos")).doesNotExist();
  }

  @Test
  void aPhotographOfWhatTheEngineHasNotIsNotPutIntoTheJob() throws IOException {
    Path picture = Files.write(folder.resolve("p.png"), PICTURE);
    Shop.Outcome outcome = shop.run("photo", "--job", job, "lobe@9EX", picture.toString());
    assertThat(outcome.status()).isEqualTo(2);
    assertThat(Path.of(job).resolve("photos")).doesNotExist();
  }
}
