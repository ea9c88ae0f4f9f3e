package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.Main;

/** The real program in Java machines of its own: killed while it works, and twice on one job. */
class KilledProgramTest {
  @TempDir Path folder;
  private Shop shop;
  private String job;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    job = shop.begin("engine");
  }

  /** What is whole in a file: a line that was cut is not said. */
  private static List<String> lines(Path file) throws IOException {
    String text = Files.exists(file) ? Files.readString(file) : "";
    return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
  }

  private Process start(Path said, String... words) throws IOException {
    return program(words).redirectOutput(said.toFile()).start();
  }

  private ProcessBuilder program(String... words) {
    List<String> call =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dwherefrom.home=" + folder.resolve("home"),
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
    call.addAll(List.of(words));
    return new ProcessBuilder(call).redirectError(folder.resolve("err.txt").toFile());
  }

  private static Writer typed(Process process) {
    return new OutputStreamWriter(process.getOutputStream(), StandardCharsets.UTF_8);
  }

  private List<String> tags() {
    return shop.right("places", "--job", job).rows().stream().map(row -> row[1]).toList();
  }

  private List<String> out() {
    return shop.right("places", "--job", job).rows().stream()
        .filter(row -> row[3].startsWith("out"))
        .map(row -> row[1])
        .toList();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void whatItSaidIsThereAfterItWasKilled(long seed) throws Exception {
    Random random = new Random(seed);
    Path said = folder.resolve("said.txt");
    Process process = start(said, "out", "--job", job, "-");
    try (Writer typed = typed(process)) {
      typed.write(String.join("\n", tags()) + "\n");
      typed.flush();
      int wanted = 1 + random.nextInt(60);
      while (process.isAlive() && lines(said).size() < wanted) {
        Thread.onSpinWait();
      }
      process.destroyForcibly();
    }
    assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
    assertThat(process.exitValue()).isNotZero();
    List<String> printed = lines(said).stream().map(KilledProgramTest::tag).toList();
    assertThat(printed).isNotEmpty();
    assertThat(out()).containsAll(printed);
    assertThat(out().size() - printed.size()).as("written, not said yet").isBetween(0, 1);
    assertThat(shop.run("check", "--job", job).status()).isZero();
    List<String> rest = new ArrayList<>(tags());
    rest.removeAll(out());
    shop.runWith(String.join("\n", rest), "out", "--job", job, "-");
    assertThat(out()).hasSize(74);
  }

  private static String tag(String line) {
    String[] cells = line.split("\t");
    assertThat(cells).as(line).hasSize(3);
    assertThat(cells[1]).isEqualTo("out");
    return cells[0];
  }

  @Test
  void aSecondProgramIsRefusedUntilTheFirstEnds() throws Exception {
    List<String> tags = tags();
    Process first = program("out", "--job", job, "-").start();
    try (Writer typed = typed(first);
        BufferedReader said = first.inputReader(StandardCharsets.UTF_8)) {
      typed.write(tags.get(0) + "\n");
      typed.flush();
      assertThat(said.readLine()).startsWith(tags.get(0));
      Shop.Outcome second = shop.run("out", "--job", job, tags.get(1));
      assertThat(second.status()).as(second.toString()).isEqualTo(2);
      assertThat(second.err()).contains("Another program has this job open");
      assertThat(second.out()).isEmpty();
    }
    assertThat(first.waitFor(1, TimeUnit.MINUTES)).isTrue();
    assertThat(first.exitValue()).isZero();
    assertThat(out()).containsExactly(tags.get(0));
    shop.right("out", "--job", job, tags.get(1));
    assertThat(out()).hasSize(2);
  }
}
