package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobCommandsTest {
  @TempDir Path folder;
  private Shop shop;

  @BeforeEach
  void open() {
    shop = new Shop(folder);
  }

  @ParameterizedTest
  @CsvSource({
    "inline-4, 42, 102",
    "inline-6, 62, 151",
    "v6-odd-even, 56, 142",
    "v8-odd-even, 74, 188",
    "v8-sequence, 74, 188",
    "opposed-4, 38, 93"
  })
  void aJobHasAPlaceForEveryPartOfItsLayout(String layout, int always, int all) {
    String few = shop.path("few");
    String many = shop.path("many");
    shop.right("job", "new", "--folder", few, "--layout", layout, "--name", "few");
    shop.right(
        "job", "new", "--folder", many, "--layout", layout, "--name", "many", "--track", "all");
    assertThat(shop.right("places", "--job", few).lines()).hasSize(always);
    assertThat(shop.right("places", "--job", many).lines()).hasSize(all);
  }

  @Test
  void theFolderItselfBecomesTheJob() {
    String job = shop.begin("mine");
    assertThat(Path.of(job, "logbook-0001.jsonl")).exists();
  }

  @Test
  void kindsAreTrackedBesideThoseThatAlwaysAre() {
    String job = shop.path("job");
    shop.right(
        "job",
        "new",
        "--folder",
        job,
        "--layout",
        "inline-4",
        "--name",
        "x",
        "--track",
        "valve,piston");
    assertThat(shop.right("places", "--job", job).lines()).hasSize(42 + 8 + 4);
  }

  @Test
  void aShopListsItsJobsAndWhatToDoNext() {
    shop.begin("first");
    shop.begin("second");
    assertThat(shop.right("job", "list", "--folder", folder.toString()).rows())
        .extracting(row -> row[1])
        .containsExactlyInAnyOrder("first", "second");
    assertThat(shop.right("job", "list").out()).contains("Take apart. Next out: ");
  }

  @Test
  void aLayoutIsWrittenEditedAndUsed() throws IOException {
    Path file = folder.resolve("mine.json");
    shop.right("layouts", "inline-4", "--out", file.toString());
    Files.writeString(
        file, Files.readString(file).replace("inline-4", "mine").replace("Inline 4", "Mine"));
    String job = shop.path("job");
    shop.right("job", "new", "--folder", job, "--layout-file", file.toString(), "--name", "x");
    assertThat(shop.right("places", "--job", job).lines()).hasSize(42);
  }

  @Test
  void aWrongLayoutIsRefusedByTheNameOfItsField() throws IOException {
    Path file = folder.resolve("mine.json");
    shop.right("layouts", "inline-4", "--out", file.toString());
    Files.writeString(file, Files.readString(file).replace("\"EIIEEIIE\"", "\"EIIE\""));
    Shop.Outcome refused =
        shop.run(
            "job",
            "new",
            "--folder",
            shop.path("job"),
            "--layout-file",
            file.toString(),
            "--name",
            "x");
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err()).contains("valves: ");
    assertThat(Path.of(shop.path("job"))).doesNotExist();
  }

  @Test
  void aJobComesBackFromItsOneFile() {
    String job = shop.begin("engine");
    shop.right("out", "--job", job, shop.codes(job, "rod 3, upper shell").tag());
    String file = shop.path("engine.zip");
    shop.right("export", "--job", job, "--out", file);
    String second = shop.path("second");
    String back =
        shop.right("import", file, "--folder", second)
            .out()
            .strip()
            .replaceAll("^.* into |\\.$", "");
    assertThat(shop.right("places", "--job", back).out())
        .isEqualTo(shop.right("places", "--job", job).out());
    assertThat(shop.run("export", "--job", job, "--out", file).status()).isEqualTo(2);
  }

  @Test
  void theSecondCopyIsTheSameJob() {
    String job = shop.begin("engine");
    String stick = shop.path("stick");
    shop.right("backup", "--job", job, "--to", stick);
    String copy = Path.of(stick, "engine").toString();
    assertThat(shop.right("places", "--job", copy).out())
        .isEqualTo(shop.right("places", "--job", job).out());
  }

  @Test
  void aSoundJobChecksRightAndADamagedOneStops() throws IOException {
    String job = shop.begin("engine");
    shop.takeApart(job);
    assertThat(shop.right("check", "--job", job).lines().get(0)).startsWith("sound\t");
    Path logbook = Path.of(job, "logbook-0001.jsonl");
    Files.writeString(logbook, Files.readString(logbook).replaceFirst("part-out", "part-but"));
    Shop.Outcome damaged = shop.run("check", "--job", job);
    assertThat(damaged.status()).isEqualTo(1);
    assertThat(damaged.out()).contains("damaged\t");
    String rocker = shop.codes(job, "cylinder 1, intake, rocker").tag();
    Shop.Outcome write = shop.run("note", "--job", job, "--text", "x", rocker);
    assertThat(write.status()).isEqualTo(2);
    assertThat(write.err()).contains("Nothing was written.");
  }

  @Test
  void resumingSaysWhatIsAwayAndWhatToDo() {
    String job = shop.begin("engine");
    shop.takeApart(job);
    shop.right("wash", "--job", job, "--basket", "4", shop.codes(job, "rod 3, upper shell").tag());
    assertThat(shop.right("resume", "--job", job).lines())
        .contains(
            "In the engine 0, fitted 0, to fit 74.",
            "Away: rod 3, upper shell: off for washing, basket 4.",
            "Put together. To fit: 74.");
  }
}
