package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every command that writes a file asks before it writes over one. */
class OutletTest {
  @TempDir Path folder;

  private static List<String[]> calls(String job) {
    return List.of(
        new String[] {"tags", "--job", job, "--stock", "a4-3x8-63.5x33.9", "--out"},
        new String[] {"record", "--job", job, "--out"},
        new String[] {"record", "--job", job, "--csv"},
        new String[] {"shop", "slip", "--job", job, "--visit", "1", "--out"},
        new String[] {"money", "out", "--job", job, "--out"},
        new String[] {"export", "--job", job, "--out"},
        new String[] {"layouts", "inline-6", "--out"});
  }

  private Shop shop() {
    Shop shop = new Shop(folder);
    String job = shop.begin("job");
    shop.right(
        "shop",
        "add",
        "--job",
        job,
        "--visit",
        "1",
        "--what",
        "block",
        "--count",
        "1",
        "--wanted",
        "bore all eight");
    return shop;
  }

  private static String[] with(String[] call, String... more) {
    return Stream.concat(Stream.of(call), Stream.of(more)).toArray(String[]::new);
  }

  @Test
  void aFileThatIsThereStaysUnlessTheCallSaysReplace() throws IOException {
    Shop shop = shop();
    for (String[] call : calls(shop.path("job"))) {
      Path file = Files.writeString(folder.resolve("mine"), "annotated");
      Shop.Outcome refused = shop.run(with(call, file.toString()));
      assertThat(refused.status()).as(String.join(" ", call)).isEqualTo(2);
      assertThat(refused.err())
          .startsWith(
              file + " is there already. Give another name, or --replace to write over it.");
      assertThat(file).hasContent("annotated");
      shop.right(with(call, file.toString(), "--replace"));
      assertThat(Files.readString(file, StandardCharsets.ISO_8859_1)).isNotEqualTo("annotated");
      assertThat(Files.size(file)).isGreaterThan(30);
    }
  }

  @Test
  void aHyphenIsStandardOutputAndTheAnswerGoesBesideIt() {
    Shop shop = shop();
    List<String> starts = new ArrayList<>();
    for (String[] call : calls(shop.path("job"))) {
      Shop.Outcome outcome = shop.right(with(call, "-"));
      starts.add(outcome.out().substring(0, 4));
      assertThat(outcome.err()).as(String.join(" ", call)).contains("standard output");
      assertThat(outcome.out()).doesNotContain("standard output");
    }
    assertThat(starts)
        .containsExactly("%PDF", "%PDF", "buil", "%PDF", "what", "PK\u0003\u0004", "{\n  ");
    assertThat(folder.resolve("-")).doesNotExist();
  }

  @Test
  void twoFilesDoNotGoToOnePlace() {
    Shop shop = shop();
    Shop.Outcome outcome =
        shop.run("record", "--job", shop.path("job"), "--out", "-", "--csv", "-");
    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err())
        .startsWith("Two files are to go to one place: give each its own name.");
    assertThat(outcome.out()).isEmpty();
  }

  @Test
  void aDeviceIsWrittenToWithoutAsking() {
    Shop shop = shop();
    for (String[] call : calls(shop.path("job"))) {
      shop.right(with(call, "/dev/null"));
    }
    assertThat(Files.isRegularFile(Path.of("/dev/null"))).isFalse();
  }
}
