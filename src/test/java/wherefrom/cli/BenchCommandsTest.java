package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Taking apart, and what happens to parts between the two days. */
class BenchCommandsTest {
  private static final String PUSHROD = "cylinder 3, exhaust, pushrod";

  @TempDir Path folder;
  private Shop shop;
  private String job;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    job = shop.begin("engine");
  }

  private String tag(String place) {
    return shop.codes(job, place).tag();
  }

  @Test
  void everyPlaceBeginsWithItsPartIn() {
    assertThat(shop.right("places", "--job", job).rows())
        .hasSize(74)
        .allSatisfy(
            row -> {
              assertThat(row).hasSize(4);
              assertThat(row[0]).matches("2\\d{15}");
              assertThat(row[1]).matches("1\\d{15}");
              assertThat(row[3]).isEqualTo("in");
            });
    assertThat(shop.right("to-fit", "--job", job).lines()).containsExactly("0 to fit");
  }

  @Test
  void partsComeOutOnceAndASecondScanIsNoHarm() {
    String tag = tag(PUSHROD);
    assertThat(shop.right("out", "--job", job, tag).lines())
        .containsExactly(tag + "\tout\t" + PUSHROD);
    assertThat(shop.right("out", "--job", job, tag).lines())
        .containsExactly(tag + "\talready out\t" + PUSHROD);
    assertThat(shop.right("to-fit", "--job", job).lines())
        .containsExactly(PUSHROD + "\tout\t" + tag, "1 to fit");
  }

  @Test
  void aFittedOrLostPartIsNotSaidToBeOut() {
    String tag = tag(PUSHROD);
    shop.right("out", "--job", job, tag);
    shop.right("lost", "--job", job, tag);
    Shop.Outcome lost = shop.run("out", "--job", job, tag);
    assertThat(lost.status()).isEqualTo(1);
    assertThat(lost.lines()).containsExactly(tag + "\tlost\t" + PUSHROD);
    shop.right("found", "--job", job, tag);
    shop.right("fit", "--job", job, tag, shop.codes(job, PUSHROD).card());
    Shop.Outcome fitted = shop.run("out", "--job", job, tag);
    assertThat(fitted.status()).isEqualTo(1);
    assertThat(fitted.lines()).containsExactly(tag + "\tfitted\t" + PUSHROD);
    assertThat(shop.state(job, PUSHROD)).isEqualTo("fitted");
  }

  @Test
  void severalCodesComeInOneCallOrOnALineEach() {
    shop.right("out", "--job", job, tag(PUSHROD), tag("rod 3, upper shell"));
    Shop.Outcome lines =
        shop.runWith(
            tag("rod 3, lower shell") + "\n\n" + tag("main 1, upper shell") + "\n",
            "out",
            "--job",
            job,
            "-");
    assertThat(lines.status()).isZero();
    assertThat(shop.right("to-fit", "--job", job).lines()).last().isEqualTo("4 to fit");
  }

  @Test
  void aTypedCodeThatTheShellParted() {
    String tag = tag(PUSHROD);
    shop.right("out", "--job", job, tag.substring(8, 12), tag.substring(14));
    assertThat(shop.state(job, PUSHROD)).isEqualTo("out");
  }

  @Test
  void aForeignTagIsStoppedAndTheOthersComeOut() {
    String other = shop.codes(shop.begin("neighbor"), PUSHROD).tag();
    Shop.Outcome out = shop.run("out", "--job", job, other, tag(PUSHROD));
    assertThat(out.status()).isEqualTo(1);
    assertThat(out.rows().get(0)).startsWith(other, "wrong engine");
    assertThat(shop.state(job, PUSHROD)).isEqualTo("out");
  }

  @Test
  void whereSaysWhereAPartGoesAndWhatBelongsAtAPlace() {
    assertThat(shop.right("where", "--job", job, tag(PUSHROD)).lines())
        .containsExactly("It belongs at cylinder 3, exhaust, pushrod. It is in the engine.");
    String card = shop.codes(job, PUSHROD).card();
    assertThat(shop.right("where", "--job", job, card).out())
        .contains("cylinder 3, exhaust, rocker: ", "cylinder 3, exhaust, lifter: ");
    assertThat(shop.run("where", "--job", job, "12").status()).isEqualTo(1);
  }

  @Test
  void aPartGoesThroughWashingLossAndFinding() {
    String tag = tag(PUSHROD);
    shop.right("out", "--job", job, tag);
    shop.right("wash", "--job", job, "--basket", "2", tag);
    assertThat(shop.state(job, PUSHROD)).isEqualTo("washing");
    shop.right("lost", "--job", job, "--note", "not in the basket", tag);
    assertThat(shop.state(job, PUSHROD)).isEqualTo("lost");
    shop.right("found", "--job", job, tag);
    assertThat(shop.state(job, PUSHROD)).isEqualTo("out");
    assertThat(shop.run("found", "--job", job, tag).status()).isEqualTo(2);
  }

  @Test
  void aNoteIsKept() {
    shop.right("note", "--job", job, "--text", "blue at the tip", tag(PUSHROD));
    shop.change(
        job,
        open ->
            assertThat(open.state().parts())
                .flatExtracting(part -> part.remarks())
                .singleElement()
                .satisfies(remark -> assertThat(remark.text()).isEqualTo("blue at the tip")));
  }

  @Test
  void aReplacementHasATagOfItsOwn() {
    String old = tag(PUSHROD);
    shop.right("replace", "--job", job, "--reason", "broken", old);
    assertThat(tag(PUSHROD)).isNotEqualTo(old).contains("0075");
  }

  @Test
  void aSectionClosesOnceEveryPlaceIsFilledOrExcused() {
    shop.right("out", "--job", job, tag("rod 3, upper shell"), tag("rod 3, lower shell"));
    Shop.Outcome open = shop.run("finish", "--job", job, "rods");
    assertThat(open.status()).isEqualTo(1);
    assertThat(open.out()).contains("rod 3, upper shell", "rod 3, lower shell");
    shop.right(
        "leave-empty", "--job", job, "--reason", "rod is left out", tag("rod 3, upper shell"));
    shop.right(
        "leave-empty",
        "--job",
        job,
        "--reason",
        "same",
        shop.codes(job, "rod 3, lower shell").card());
    assertThat(shop.state(job, "rod 3, upper shell")).isEqualTo("left empty");
    assertThat(shop.right("finish", "--job", job, "rods").out()).startsWith("Finished: ");
  }

  /** The cautions stand on the step where they apply, here as in the window. */
  @Test
  void theLastSectionThatClosesSaysWhatComesBeforeTheFirstStart() {
    shop.right("plan", "made", "--job", job, "hot-tanked");
    for (String section : List.of("mains", "rods", "valvetrain-left")) {
      assertThat(shop.right("finish", "--job", job, section).out())
          .startsWith("Finished: ")
          .doesNotContain("first start");
    }
    Shop.Outcome last = shop.right("finish", "--job", job, "valvetrain-right");
    assertThat(last.lines())
        .startsWith("Finished: valvetrain, right bank.", "Before the first start:")
        .anyMatch(line -> line.startsWith("Caution\tHave a fire extinguisher in reach"))
        .anyMatch(line -> line.startsWith("Open check\tSee that every core plug"))
        .anyMatch(line -> line.startsWith("Prime the oil\t"));
    assertThat(last.rows().subList(2, last.rows().size()))
        .allSatisfy(row -> assertThat(row[2]).isNotBlank());
  }

  @Test
  void anExcuseAtACardNeedsTheKindWhereSeveralAreTracked() {
    String card = shop.codes(job, PUSHROD).card();
    shop.right("out", "--job", job, tag(PUSHROD));
    Shop.Outcome which = shop.run("leave-empty", "--job", job, "--reason", "x", card);
    assertThat(which.status()).isEqualTo(2);
    assertThat(which.err()).contains("rocker, pushrod, lifter");
    shop.right("leave-empty", "--job", job, "--reason", "x", "--kind", "pushrod", card);
    assertThat(shop.state(job, PUSHROD)).isEqualTo("left empty");
  }

  @Test
  void aFittedPartIsTakenOutAgain() {
    shop.right("out", "--job", job, tag(PUSHROD));
    shop.right("fit", "--job", job, tag(PUSHROD), shop.codes(job, PUSHROD).card());
    shop.right("took-out", "--job", job, tag(PUSHROD));
    assertThat(shop.state(job, PUSHROD)).isEqualTo("out");
  }
}
