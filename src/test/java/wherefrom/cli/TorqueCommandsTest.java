package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A torque card on real files, each call a program of its own. */
class TorqueCommandsTest {
  private static final String[] HEAD = {
    "--fastener",
    "head bolts, left",
    "--rows",
    "2",
    "--columns",
    "5",
    "--threads",
    "oiled",
    "--stage",
    "30N·m",
    "60N·m",
    "90deg",
    "--source",
    "this engine's manual, p. 12"
  };

  @TempDir Path folder;
  private Shop shop;
  private String job;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    job = shop.begin("engine");
  }

  private Shop.Outcome torque(String verb, String... rest) {
    List<String> words = new ArrayList<>(List.of("torque", verb, "--job", job));
    words.addAll(List.of(rest));
    return shop.run(words.toArray(String[]::new));
  }

  private String right(String verb, String... rest) {
    Shop.Outcome outcome = torque(verb, rest);
    assertThat(outcome.status()).as(outcome.toString()).isZero();
    return outcome.out().strip();
  }

  private String tick(int bolt, String person, String... rest) {
    List<String> words = new ArrayList<>(List.of("--card", "1", "--bolt", "" + bolt));
    words.addAll(List.of("--person", person));
    words.addAll(List.of(rest));
    return right("tick", words.toArray(String[]::new));
  }

  private JsonNode show() throws IOException {
    return new ObjectMapper().readTree(right("show", "--card", "1", "--json"));
  }

  private List<String> recordLines() throws IOException {
    Path csv = folder.resolve("record.csv");
    Path pdf = folder.resolve("record.pdf");
    shop.right(
        "record", "--job", job, "--out", pdf.toString(), "--csv", csv.toString(), "--replace");
    return Files.readAllLines(csv);
  }

  @Test
  void aHeadOfTenBoltsGoesThroughThreeStagesAndASecondPerson() throws IOException {
    assertThat(right("new", HEAD))
        .isEqualTo("Torque card 1 is written. Stage 1: bolt 1 to 30 N·m.");
    for (int bolt = 1; bolt <= 10; bolt++) {
      tick(bolt, "A. B.");
    }
    assertThat(tick(1, "A. B.")).isEqualTo("Stage 2: bolt 2 to 60 N·m.");
    Shop.Outcome wrong = torque("tick", "--card", "1", "--bolt", "7", "--person", "A. B.");
    assertThat(wrong.status()).isEqualTo(1);
    assertThat(wrong.out()).contains("Out of turn: Bolt 7 is not the next one", "bolt 2");
    assertThat(show().path("ticks")).as("the question ticks nothing").hasSize(11);
    tick(2, "A. B.");
    assertThat(right("undo", "--card", "1"))
        .isEqualTo("Undone: bolt 2. Stage 2: bolt 2 to 60 N·m.");
    for (int bolt = 2; bolt <= 10; bolt++) {
      right("tick", "--card", "1", "--person", "A. B.");
    }
    tick(2, "A. B.", "--out-of-turn");
    assertThat(tick(1, "A. B.")).isEqualTo("Stage 3: turn bolt 3 on by 90 deg.");
    for (int bolt = 3; bolt <= 10; bolt++) {
      tick(bolt, "A. B.");
    }
    assertThat(right("list")).contains("NOT CHECKED by a second person: 0 of 10");
    Shop.Outcome same = torque("tick", "--card", "1", "--bolt", "1", "--person", "a. b.");
    assertThat(same.status()).isEqualTo(2);
    assertThat(same.err()).contains("another person must check");
    assertThat(recordLines())
        .anyMatch(line -> line.contains("second person's check") && line.contains("NOT CHECKED"))
        .anyMatch(line -> line.contains("Torque: torque card 1, head bolts, left"));
    for (int bolt = 1; bolt <= 10; bolt++) {
      tick(bolt, "C. D.");
    }
    assertThat(show().path("checked").asBoolean()).isTrue();
    assertThat(recordLines())
        .anyMatch(line -> line.contains("stage 3 turn on by 90 deg") && line.contains("turn: 2"))
        .anyMatch(line -> line.contains("second person's check") && line.contains("C. D."))
        .noneMatch(line -> line.contains("Torque: torque card 1"));
    assertThat(shop.right("check", "--job", job).out()).contains("sound");
  }

  @Test
  void anOwnOrderSaysWhereItComesFrom() throws IOException {
    String[] own = new String[HEAD.length + 6];
    System.arraycopy(HEAD, 0, own, 0, HEAD.length);
    String[] more = {"--order", "3,2", "4", "8", "--order-from", "manual, fig. 3"};
    System.arraycopy(more, 0, own, HEAD.length, more.length);
    right("new", own);
    assertThat(show().path("bolts").asInt()).isEqualTo(4);
    assertThat(show().path("orderFrom").asText()).isEqualTo("manual, fig. 3");
    own[HEAD.length + 5] = " ";
    assertThat(torque("new", own).err()).contains("say where the order comes from");
    own[HEAD.length + 5] = "fig. 3";
    own[HEAD.length + 3] = "3";
    assertThat(torque("new", own).err()).contains("each bolt once");
  }

  @Test
  void whatIsMissingOrWrongIsSaidAndNothingIsWritten() {
    assertThat(torque("new", with(9, "30")).err()).contains("has no unit");
    assertThat(torque("new", with(9, "30mm")).err()).contains("is not a stage");
    assertThat(torque("new", with(10, "20N·m")).err()).contains("no less than the one before");
    assertThat(torque("new", with(7, " ")).err()).contains("how the threads are prepared");
    assertThat(torque("new", with(13, " ")).err()).contains("where the figures come from");
    assertThat(torque("new", with(3, "9")).err()).contains("1 to 5");
    assertThat(torque("tick", "--card", "1", "--person", "A").err()).contains("no torque card 1");
    assertThat(right("list")).isEmpty();
  }

  private static String[] with(int at, String word) {
    String[] words = HEAD.clone();
    words[at] = word;
    return words;
  }

  @Test
  void aCardThatIsGivenUpStaysInTheRecordAndItsNumberIsNotUsedAgain() throws IOException {
    right("new", HEAD);
    assertThat(torque("undo", "--card", "1").err()).contains("No bolt is ticked");
    right("drop", "--card", "1", "--reason", "gasket slipped");
    assertThat(torque("tick", "--card", "1", "--person", "A").err()).contains("in use");
    assertThat(right("new", HEAD)).startsWith("Torque card 2");
    assertThat(recordLines()).anyMatch(line -> line.contains("dropped: gasket slipped"));
  }
}
