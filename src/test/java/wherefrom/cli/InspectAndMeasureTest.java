package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InspectAndMeasureTest {
  private static final String SOURCE = "this engine's manual, p. 9";
  @TempDir Path folder;
  private Shop shop;
  private String job;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    job = shop.begin("first");
    shop.takeApart(job);
    shop.right(
        "tool",
        "add",
        "--job",
        job,
        "--name",
        "mic",
        "--step",
        "0.0001in",
        "--error",
        "0.0001in",
        "--repeat",
        "0.0001in");
  }

  private String tag(String place) {
    return shop.codes(job, place).tag();
  }

  private Shop.Outcome measure(String subject, String plan, String... sizes) {
    List<String> words =
        new java.util.ArrayList<>(
            List.of("measure", "--job", job, subject, "--plan", plan, "--tool", "mic"));
    words.addAll(List.of(sizes));
    return shop.run(words.toArray(String[]::new));
  }

  @Test
  void whatNobodyHasLookedAtGetsShorterWithEachAnswer() {
    String part = tag("cylinder 3, exhaust, pushrod");
    int before = shop.right("inspect", "--job", job).lines().size();
    for (String check : List.of("pushrod-roll", "pushrod-ends", "pushrod-oilway")) {
      shop.right("inspect", "--job", job, part, "--check", check, "--answer", "pass");
    }
    assertThat(shop.right("inspect", "--job", job).lines()).hasSize(before - 1);
    assertThat(shop.right("inspect", "--job", job, part).rows())
        .extracting(row -> row[1])
        .containsExactly("pass", "pass", "pass");
  }

  @Test
  void aFailedPartSaysWhatFollows() {
    Shop.Outcome failed =
        shop.right(
            "inspect",
            "--job",
            job,
            tag("cylinder 3, exhaust, pushrod"),
            "--check",
            "pushrod-roll",
            "--answer",
            "fail",
            "--json");
    assertThat(failed.out()).contains("\"rule 25: ").contains("\"answer\"").contains("fail");
  }

  @Test
  void aFeatureIsNamedByItsKey() {
    shop.right("inspect", "--job", job, "lobe@3EX", "--check", "lobe-look", "--answer", "suspect");
    assertThat(shop.right("inspect", "--job", job, "lobe@3EX").out()).contains("suspect");
    Shop.Outcome none = shop.run("inspect", "--job", job, "lobe@9EX");
    assertThat(none.status()).isEqualTo(2);
    assertThat(none.err()).contains("lobe@8EX");
  }

  @Test
  void beforeWashingNamesTheDirtyTestsAlone() {
    assertThat(shop.right("inspect", "--job", job, "--before-washing").rows())
        .extracting(row -> row[2])
        .contains("main-shell-face")
        .noneMatch(checks -> checks.contains("pushrod-roll"));
  }

  @Test
  void readingsAreJudgedAgainstTheTypedLimit() {
    shop.right(
        "limit",
        "set",
        "--job",
        job,
        "--plan",
        "pushrod-runout",
        "--result",
        "value",
        "--upper",
        "0.002in",
        "--source",
        SOURCE);
    String part = tag("cylinder 3, exhaust, pushrod");
    assertThat(measure(part, "pushrod-runout", "0.0010in").out()).contains("accept");
    assertThat(measure(part, "pushrod-runout", "0.0020in/0.0019in").out()).contains("undecided");
    assertThat(shop.right("measure", "--job", job, "--undecided").out()).contains(SOURCE);
    assertThat(measure(part, "pushrod-runout", "0.0030in").out()).contains("reject");
    assertThat(shop.right("measure", "--job", job, "--undecided").out()).isEmpty();
  }

  @Test
  void aSlipOfTheUnitStopsUntilConfirmed() {
    Shop.Outcome slip = measure("main-journal@M2", "main-journal", "66.29in");
    assertThat(slip.status()).isEqualTo(1);
    assertThat(slip.out()).contains("66.29 mm by any chance?");
    assertThat(shop.right("measure", "--job", job, "main-journal@M2").out())
        .contains("not measured");
    assertThat(measure("main-journal@M2", "main-journal", "66.29in", "--confirmed").status())
        .isZero();
  }

  @Test
  void halfASetIsKeptAndNotJudged() {
    shop.right(
        "limit",
        "set",
        "--job",
        job,
        "--plan",
        "main-journal",
        "--result",
        "taper",
        "--upper",
        "0.0005in",
        "--source",
        SOURCE);
    assertThat(measure("main-journal@M2", "main-journal", "2.6100in", "2.6100in").out())
        .contains("2 of 4 readings, not judged yet")
        .doesNotContain("accept");
  }

  @Test
  void housingShellAndJournalGiveTheClearance() {
    measure("main-housing@M2", "main-housing", "2.8010in", "2.8011in", "2.8012in");
    measure("main-journal@M2", "main-journal", "2.6100in", "2.6100in", "2.6100in", "2.6100in");
    assertThat(shop.right("clearance", "--job", job).lines().get(1))
        .contains("Still to measure: a shell's wall");
    String shell = tag("main 2, upper shell");
    measure(shell, "main-shell-wall", "0.0945in", "0.0945in", "0.0945in");
    shop.right(
        "limit",
        "set",
        "--job",
        job,
        "--plan",
        "main-journal",
        "--result",
        "clearance",
        "--lower",
        "0.0005in",
        "--upper",
        "0.0030in",
        "--source",
        SOURCE);
    assertThat(shop.right("clearance", "--job", job).lines().get(1))
        .contains("Oil clearance 0.0020")
        .contains("accept");
    assertThat(shop.right("clearance", "--job", job, "--json").out()).contains("\"answer\"");
    // By the mean 0.0022 in would do; at its most, 0.0028 in, the limit is too near.
    measure("main-journal@M2", "main-journal", "2.6100in", "2.6100in", "2.6092in", "2.6092in");
    assertThat(shop.right("clearance", "--job", job).lines().get(1))
        .contains("Oil clearance at its most 0.0028")
        .contains("undecided");
    assertThat(shop.right("clearance", "--job", job, "--json").out())
        .contains("\"answer\":\"undecided\"", "\"least\":0.002,", "\"most\":0.0028");
  }

  @Test
  void theOddPushrodOfASetIsNamed() {
    List<String> sides = List.of("intake", "exhaust");
    for (int cylinder = 1; cylinder <= 3; cylinder++) {
      for (String side : sides) {
        String part = tag("cylinder " + cylinder + ", " + side + ", pushrod");
        measure(part, "pushrod-length", "7.794" + cylinder + "in");
      }
    }
    assertThat(shop.run("compare", "--job", job, "--plan", "pushrod-length").status()).isZero();
    measure(tag("cylinder 4, intake, pushrod"), "pushrod-length", "7.7860in");
    Shop.Outcome odd = shop.run("compare", "--job", job, "--plan", "pushrod-length");
    assertThat(odd.status()).isEqualTo(1);
    assertThat(odd.rows().stream().filter(row -> row.length > 3 && row[3].equals("odd")))
        .extracting(row -> row[0])
        .containsExactly("4 IN");
  }

  @Test
  void theStudThatStandsProudIsNamed() {
    List<String> studs = List.of("1IN", "1EX", "3IN", "3EX", "5IN", "5EX", "7IN", "7EX");
    for (int at = 0; at < studs.size(); at++) {
      measure("stud@" + studs.get(at), "stud-height", at == 4 ? "1.7630in" : "1.751" + at + "in");
    }
    String bank =
        shop.run("compare", "--job", job, "--plan", "stud-height", "--bank", "none").err();
    assertThat(bank).contains("no bank");
    Shop.Outcome line =
        shop.run("compare", "--job", job, "--plan", "stud-height", "--bank", "left");
    assertThat(line.status()).isEqualTo(1);
    assertThat(line.rows().stream().filter(row -> row[2].equals("fail")))
        .extracting(row -> row[0])
        .containsExactly("5 IN");
  }

  @Test
  void aLimitOfNoResultIsRefusedWithThoseThereAre() {
    Shop.Outcome refused =
        shop.run(
            "limit",
            "set",
            "--job",
            job,
            "--plan",
            "main-journal",
            "--result",
            "roundness",
            "--upper",
            "0.0005in",
            "--source",
            SOURCE);
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err()).contains("out-of-round, taper");
  }

  @Test
  void toolsAreListedWithTheirZero() {
    assertThat(shop.right("tool", "list", "--job", job).out()).contains("zero: not checked");
    shop.right("tool", "zero", "--job", job, "--name", "mic", "--shows", "0.0003in");
    assertThat(shop.right("tool", "list", "--job", job).out()).contains("zero: 0.0003 in");
  }
}
