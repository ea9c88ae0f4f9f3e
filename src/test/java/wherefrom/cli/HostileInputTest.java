package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Inputs made to fill the memory or to hang: each is refused with a sentence, and soon. */
@Timeout(20)
class HostileInputTest {
  @TempDir Path folder;

  private Shop shop() {
    return new Shop(folder);
  }

  private static void refused(Shop.Outcome outcome, String said) {
    assertThat(outcome.status()).as(outcome.toString()).isEqualTo(2);
    assertThat(outcome.err()).contains(said).doesNotContain("fault in Wherefrom");
  }

  private Path pipe(String name) throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/mkfifo")), "pipes with names");
    Path pipe = folder.resolve(name);
    assertThat(new ProcessBuilder("/usr/bin/mkfifo", pipe.toString()).start().waitFor()).isZero();
    return pipe;
  }

  @Test
  void aPipeIsNoFileAtAnyDoor() throws Exception {
    Shop shop = shop();
    String job = shop.begin("job");
    String pipe = pipe("pipe.json").toString();
    refused(
        shop.run("job", "new", "--folder", "x", "--layout-file", pipe, "--name", "x"), "a pipe");
    refused(shop.run("tags", "--job", job, "--stock", pipe, "--out", shop.path("t.pdf")), "a pipe");
    refused(shop.run("money", "in", "--job", job, pipe), "a pipe");
    refused(shop.run("photo", "--job", job, "lobe@3EX", pipe), "a pipe");
    refused(shop.run("read", pipe), "is not a picture file");
    refused(shop.run("import", pipe, "--folder", shop.path("shop")), "There is no file");
  }

  @Test
  void aPipeWhereALogbookLiesDoesNotHangTheList() throws Exception {
    Shop shop = shop();
    Files.createDirectory(folder.resolve("odd"));
    pipe("odd/logbook-0001.jsonl");
    shop.begin("job");
    assertThat(shop.right("job", "list", "--folder", folder.toString()).out()).contains("job");
    pipe("job/logbook-0002.jsonl");
    assertThat(shop.right("to-fit", "--job", shop.path("job")).out()).contains("0 to fit");
  }

  @Test
  void aNumberThatIsVeryLongWhenWrittenOutIsNoLength() throws IOException {
    Shop shop = shop();
    String job = shop.begin("job");
    String stock = Files.readString(Path.of("labels/a4-3x8-63.5x33.9.json"));
    for (String number : new String[] {"1e-999999999", "1e999999999", "0." + "1".repeat(900)}) {
      Path own = folder.resolve("own.json");
      Files.writeString(own, stock.replaceFirst("\"left\": *[0-9.]+", "\"left\": " + number));
      refused(
          shop.run("tags", "--job", job, "--stock", own.toString(), "--out", shop.path("t.pdf")),
          "left must be a number in mm");
    }
  }

  @Test
  void aLayoutWithAFieldTwiceIsRefused() throws IOException {
    Shop shop = shop();
    Path file = folder.resolve("own.json");
    shop.right("layouts", "inline-6", "--out", file.toString());
    String twice = Files.readString(file).replaceFirst("\\{", "{\"mains\": 3,");
    Files.writeString(file, twice.replace("\"inline-6\"", "\"my-six\""));
    refused(
        shop.run(
            "job",
            "new",
            "--folder",
            shop.path("x"),
            "--layout-file",
            file.toString(),
            "--name",
            "x"),
        "a field stands twice at line ");
  }

  @Test
  void namesHaveEightyLettersAtMost() {
    Shop shop = shop();
    String job = shop.path("job");
    String[] call = {"job", "new", "--folder", job, "--layout", "inline-4", "--name", ""};
    call[7] = "N".repeat(81);
    refused(shop.run(call), "longer than 80 letters: shorten it.");
    call[7] = "\uD83D\uDE97".repeat(80);
    shop.right(call);
    refused(shop.run("note", "--job", job, "--text", "x".repeat(100_000), "1"), "4000 letters");
  }

  @Test
  void linesWithoutEndOnStandardInputAreNotKept() {
    Shop shop = shop();
    String job = shop.begin("job");
    Shop.Outcome outcome =
        shop.runWith("9".repeat(30_000_000) + "\n123\n", "out", "--job", job, "-");
    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.rows()).hasSize(2).allMatch(row -> row[1].equals("not one of ours"));
    assertThat(outcome.out().length()).isLessThan(5_000);
  }

  @Test
  void aTableOfLineFeedsIsNoTable() throws IOException {
    Shop shop = shop();
    String job = shop.begin("job");
    Path table = folder.resolve("table.csv");
    Files.write(table, new byte[20_000_000]);
    refused(shop.run("money", "in", "--job", job, table.toString()), "longer than 5 MB");
    Files.writeString(table, "\n".repeat(4_000_000));
    refused(shop.run("money", "in", "--job", job, table.toString()), "The first row must read");
  }

  @Test
  void aLogbookOfLineFeedsIsDamagedAndNoMore() throws IOException {
    Shop shop = shop();
    Path log = Files.createDirectory(folder.resolve("odd")).resolve("logbook-0001.jsonl");
    Files.writeString(log, "\n".repeat(20_000_000), StandardCharsets.US_ASCII);
    assertThat(shop.run("check", "--job", shop.path("odd")).status()).isNotZero();
    Path job = Path.of(shop.begin("job"));
    Path second = job.resolve("logbook-0002.jsonl");
    Files.writeString(second, "\n".repeat(20_000_000), StandardCharsets.US_ASCII);
    assertThat(shop.run("check", "--job", job.toString()).status()).isNotZero();
  }

  private Path archive(String manifest, String name, int zeros) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry("manifest.json"));
      zip.write(manifest.getBytes(StandardCharsets.UTF_8));
      zip.putNextEntry(new ZipEntry(name));
      fill(zip, zeros);
    }
    return Files.write(folder.resolve("a.zip"), bytes.toByteArray());
  }

  private static void fill(OutputStream out, int zeros) throws IOException {
    byte[] block = new byte[1_000_000];
    for (int left = zeros; left > 0; left -= block.length) {
      out.write(block, 0, Math.min(left, block.length));
    }
  }

  private static String manifest(String size) {
    return "{\"format\":\"wherefrom-job\",\"version\":1,\"job\":\"x\",\"engine\":1,\"files\":"
        + "[{\"name\":\"logbook-0001.jsonl\",\"size\":"
        + size
        + ",\"sha256\":\"00\"}]}";
  }

  @Test
  void anArchiveThatGrowsWhenItIsUnpackedIsRefused() throws IOException {
    Shop shop = shop();
    String to = shop.path("shop");
    Path grown = archive(manifest("400000000"), "logbook-0001.jsonl", 400_000_000);
    refused(shop.run("import", grown.toString(), "--folder", to), "larger than it should be");
    for (String size : new String[] {"2147483647", "-1", "99999999999", "1e3"}) {
      Path odd = archive(manifest(size), "logbook-0001.jsonl", 10);
      refused(shop.run("import", odd.toString(), "--folder", to), "was not imported: ");
    }
    Path named = archive(manifest("10").replace("-0001", "-00001"), "logbook-00001.jsonl", 10);
    refused(shop.run("import", named.toString(), "--folder", to), "no job holds a file such as");
    assertThat(folder.resolve("shop")).doesNotExist();
  }

  @Test
  void whatIsReadHasAnEnd() {
    assertThatThrownBy(() -> wherefrom.files.Incoming.read(Path.of("/dev/zero"), 10))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("a pipe or a device");
  }
}
