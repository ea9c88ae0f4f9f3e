package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What holds for every command: its help, and its answer as JSON. */
class EveryCommandTest {
  private static final String PUSHROD = "cylinder 3, exhaust, pushrod";

  @TempDir Path folder;
  private Shop shop;
  private String job;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    job = shop.begin("engine");
  }

  static List<String> names(Shop shop) {
    return shop.right("--help").lines().stream()
        .filter(line -> line.matches(" {2}\\S.*"))
        .map(line -> line.strip().split(" {2,}")[0])
        .toList();
  }

  /** What stands at the beginning of a line of its help. */
  static List<String> options(Shop shop, String name) {
    List<String> words = new ArrayList<>(List.of(name.split(" ")));
    words.add("--help");
    return shop.right(words.toArray(String[]::new)).lines().stream()
        .map(String::strip)
        .filter(line -> line.startsWith("--"))
        .map(line -> line.split("[ =]")[0])
        .filter(option -> !List.of("--json", "--help").contains(option))
        .toList();
  }

  @Test
  void hasHelpWithItsUsageAndItsOptions() {
    assertThat(names(shop)).hasSizeGreaterThan(25);
    for (String name : names(shop)) {
      List<String> words = new ArrayList<>(List.of(name.split(" ")));
      words.add("--help");
      Shop.Outcome help = shop.right(words.toArray(String[]::new));
      assertThat(help.out()).contains("Usage: wherefrom " + name, "--json", "--help");
      assertThat(help.err()).isEmpty();
    }
  }

  private JsonNode json(String... words) throws IOException {
    List<String> all = new ArrayList<>(List.of(words));
    all.add("--json");
    Shop.Outcome outcome = shop.run(all.toArray(String[]::new));
    assertThat(outcome.lines()).as(outcome.toString()).hasSize(1);
    return new ObjectMapper().readTree(outcome.out());
  }

  @Test
  void listsAreArraysOfObjects() throws IOException {
    assertThat(json("layouts")).hasSize(6);
    assertThat(json("stocks").get(0).path("dpi").asInt()).isPositive();
    JsonNode places = json("places", "--job", job);
    assertThat(places).hasSize(74);
    assertThat(places.get(0).path("tag").asText()).matches("1\\d{15}");
    assertThat(json("job", "list", "--folder", folder.toString()).get(0).path("name").asText())
        .isEqualTo("engine");
    assertThat(json("swaps", "--job", job)).isEmpty();
    assertThat(json("check", "--job", job).get(0).path("severity").asText()).isEqualTo("sound");
  }

  @Test
  void oneThingIsOneObject() throws IOException {
    Shop.Codes codes = shop.codes(job, PUSHROD);
    assertThat(json("out", "--job", job, codes.tag()).path("done").asText()).isEqualTo("out");
    assertThat(json("where", "--job", job, codes.tag()).path("sentence").asText())
        .contains("It belongs at");
    assertThat(json("to-fit", "--job", job).path("toFit").asInt()).isEqualTo(1);
    JsonNode verdict = json("fit", "--job", job, codes.tag(), codes.card());
    assertThat(verdict.path("verdict").asText()).isEqualTo("right place");
    assertThat(verdict.path("stopped").asBoolean(true)).isFalse();
    assertThat(json("undo", "--job", job).path("undone").asText()).contains("fitted at");
    assertThat(json("resume", "--job", job).path("toFit").asInt()).isEqualTo(1);
    assertThat(json("finish", "--job", job, "mains").path("finished").asBoolean()).isTrue();
  }

  @Test
  void severalThingsAreAnArray() throws IOException {
    Shop.Codes codes = shop.codes(job, PUSHROD);
    JsonNode out =
        json("out", "--job", job, codes.tag(), shop.codes(job, "rod 3, upper shell").tag());
    assertThat(out).hasSize(2);
  }

  @Test
  void quotesAndUmlautsComeThrough() throws IOException {
    String odd = "M\u00fcller's \"old\"\tengine";
    JsonNode begun =
        json("job", "new", "--folder", shop.path("odd"), "--layout", "inline-4", "--name", odd);
    assertThat(begun.path("name").asText()).isEqualTo(odd);
    assertThat(shop.right("job", "list").rows()).allSatisfy(row -> assertThat(row).hasSize(4));
  }
}
