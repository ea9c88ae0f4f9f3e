package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Changes, debris and decisions by command. */
class ChangeCommandsTest {
  private static final String LIFTER = "cylinder 3, exhaust, lifter";
  private static final String PUSHROD = "cylinder 3, exhaust, pushrod";

  @TempDir Path folder;
  private Shop shop;
  private String job;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    job = shop.begin("engine");
    shop.takeApart(job);
  }

  private Shop.Outcome fit(String place) {
    Shop.Codes codes = shop.codes(job, place);
    return shop.run("fit", "--job", job, codes.tag(), codes.card());
  }

  private JsonNode json(String... words) throws IOException {
    return new ObjectMapper().readTree(shop.run(words).out());
  }

  // brianesser.com, "Why must I install new lifters with my new camshaft?" (undated).
  @Test
  void newCamStopsUsedFlatLiftersAndNewOnesFit() {
    Shop.Outcome planned = shop.right("plan", "change", "--job", job, "new-flat-cam");
    assertThat(planned.lines().get(0)).isEqualTo("Plan 1: new flat-tappet cam");
    assertThat(planned.lines().get(1)).startsWith("must be new: 16 lifters\trule 1\t");
    shop.right("plan", "made", "--job", job, "1");
    Shop.Outcome used = fit(LIFTER);
    assertThat(used.status()).isEqualTo(1);
    assertThat(used.lines().get(0)).isEqualTo("must be new");
    String old = shop.codes(job, LIFTER).tag();
    shop.right("replace", "--job", job, "--reason", "must be new", old);
    Shop.Outcome fresh = fit(LIFTER);
    assertThat(fresh.status()).as(fresh.toString()).isZero();
    assertThat(fresh.lines().get(0)).isEqualTo("right place");
  }

  @Test
  void whatIsOnlyShownOrPlannedBindsNothing() {
    shop.right("plan", "change", "--job", job, "new-flat-cam", "--preview");
    assertThat(shop.right("plan", "list", "--job", job).out()).isEmpty();
    shop.right("plan", "change", "--job", job, "head-milled", "--where", "left");
    assertThat(shop.right("plan", "list", "--job", job).lines())
        .containsExactly("1\tplanned\thead milled, left bank\t0.00, 3 without a price");
    shop.right("plan", "drop", "--job", job, "1", "--reason", "too dear");
    assertThat(shop.right("plan", "list", "--job", job).out()).isEmpty();
    assertThat(fit(PUSHROD).status()).isZero();
  }

  @Test
  void aCheckHoldsThePartUntilItIsPassed() {
    shop.right("plan", "made", "--job", job, "gasket-thickness", "--size", "0.020 in");
    assertThat(fit(PUSHROD).lines().get(0)).isEqualTo("not cleared");
    String tag = shop.codes(job, PUSHROD).tag();
    assertThat(shop.right("plan", "checks", "--job", job, tag).lines().get(0))
        .startsWith("rule-11:pushrod-length\topen\t");
    shop.right(
        "plan",
        "answer",
        "--job",
        job,
        "R11:pushrod-length",
        "--answer",
        "fail",
        "--note",
        "short");
    assertThat(fit(PUSHROD).status()).isEqualTo(1);
    shop.right("plan", "answer", "--job", job, "R11:pushrod-length", "--answer", "pass");
    assertThat(fit(PUSHROD).status()).isZero();
  }

  @Test
  void wrongNamesAreRefusedWithThoseThatThereAre() {
    Shop.Outcome kind = shop.run("plan", "change", "--job", job, "new-cam");
    assertThat(kind.status()).isEqualTo(2);
    assertThat(kind.err()).contains("\"new-cam\" is not a kind of change", "new-flat-cam");
    assertThat(shop.run("plan", "made", "--job", job, "7").err()).contains("no open plan number 7");
    assertThat(shop.run("plan", "made", "--job", job, "head-milled", "--where", "top").err())
        .contains("give one of left, right");
    assertThat(shop.run("plan", "answer", "--job", job, "R9:x", "--answer", "pass").status())
        .isEqualTo(2);
    assertThat(shop.run("debris", "found", "--job", job, "pan", "gold").status()).isEqualTo(2);
    assertThat(shop.run("decide", "set", "--job", job, "wing", "--as", "reuse", "--reason", "x"))
        .satisfies(outcome -> assertThat(outcome.status()).isEqualTo(2));
  }

  @Test
  void debrisKeepsItOpenWhetherItReachedTheMainsUntilALookAnswersIt() throws IOException {
    assertThat(shop.right("debris", "found", "--job", job, "pan", "plastic").out())
        .contains("suspect teeth of the cam gear");
    Shop.Outcome open = shop.run("debris", "map", "--job", job);
    assertThat(open.status()).isEqualTo(1);
    assertThat(open.out()).contains("still to look at\tmain 1, lower shell");
    shop.right("debris", "opened", "--job", job, "filter", "--answer", "pass");
    assertThat(shop.run("debris", "map", "--job", job).status()).isEqualTo(1);
    shop.right(
        "debris", "opened", "--job", job, "first-bearings", "--answer", "pass", "--note", "gray");
    assertThat(json("debris", "map", "--job", job, "--json").path("answeredBy").get(0).asText())
        .isEqualTo("A few bearings (gray): pass");
    assertThat(shop.run("debris", "map", "--job", job).status()).isZero();
  }

  @Test
  void partsAreProposedDecidedAndBoughtByCommand() throws IOException {
    String tag = shop.codes(job, PUSHROD).tag();
    shop.right("decide", "--job", job, "--as", "replace", "--reason", "bent", tag);
    assertThat(shop.right("decide", "buy", "--job", job).lines())
        .containsExactly(
            "1\tpushrods\tas the old one; where that is damaged, measure a good"
                + " neighbor\tdecided: bent\tno price typed",
            "1\tgasket set\t\trule 27: engine taken apart\tno price typed",
            "1\tseals\t\trule 27: engine taken apart\tno price typed",
            "1\tbolts that are tightened by angle, where there are any\t\trule 27: engine taken apart"
                + "\tno price typed");
    assertThat(json("decide", "list", "--job", job, "--json")).isEmpty();
    assertThat(json("decide", "list", "--all", "--job", job, "--json")).hasSize(73);
    shop.right("decide", "ask", "--job", job, "every");
    assertThat(json("decide", "list", "--job", job, "--json")).hasSize(73);
    shop.right("decide", "ask", "--job", job, "suspect");
    assertThat(shop.right("decide", "propose", "--job", job, tag).out())
        .contains("Not inspected yet");
    shop.right("plan", "made", "--job", job, "rod-journals-ground");
    String shell = shop.codes(job, "rod 3, upper shell").tag();
    Shop.Outcome stopped =
        shop.run("decide", "--job", job, "--as", "reuse", "--reason", "looks good", shell);
    assertThat(stopped.status()).isEqualTo(1);
    assertThat(stopped.out()).contains("(rule 16; ");
    shop.right("decide", "set", "--job", job, "rod-shell", "--as", "replace", "--reason", "set");
    assertThat(json("decide", "buy", "--job", job, "--json")).hasSize(5);
    assertThat(json("decide", "list", "--all", "--job", job, "--json")).hasSize(57);
  }
}
