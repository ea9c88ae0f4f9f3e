package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Washing and the machine shop, as a script sees them. */
class ShopCommandsTest {
  private static final String PUSHROD = "cylinder 3, exhaust, pushrod";
  private static final String OTHER = "cylinder 5, exhaust, pushrod";

  @TempDir Path folder;
  private Shop shop;
  private String job;

  @BeforeEach
  void begin() {
    shop = new Shop(folder);
    job = shop.begin("engine");
    shop.takeApart(job);
  }

  private String tag(String place) {
    return shop.codes(job, place).tag();
  }

  @Test
  void aBasketIsListedAndComesBackByCount() {
    shop.right("wash", "--job", job, "--basket", "2", tag(PUSHROD), tag(OTHER));
    assertThat(shop.right("wash", "list", "--job", job).rows())
        .containsExactly(
            new String[] {"basket 2", tag(PUSHROD), PUSHROD, "1"},
            new String[] {"basket 2", tag(OTHER), OTHER, "1"});
    Shop.Outcome wrong = shop.run("wash", "count", "--job", job, "--basket", "2", "--pieces", "1");
    assertThat(wrong.status()).isEqualTo(1);
    assertThat(wrong.out()).contains("2 went into basket 2; you counted 1");
    assertThat(shop.state(job, PUSHROD)).isEqualTo("washing");
    Shop.Outcome asked = shop.run("wash", "count", "--job", job, "--basket", "2", "--pieces", "2");
    assertThat(asked.status()).isEqualTo(1);
    assertThat(asked.out()).contains("Did the tags stay on in the wash?", "--tags on");
    assertThat(shop.state(job, PUSHROD)).isEqualTo("washing");
    shop.right("wash", "count", "--job", job, "--basket", "2", "--pieces", "2", "--tags", "on");
    assertThat(shop.right("wash", "list", "--job", job).lines()).isEmpty();
    assertThat(shop.state(job, PUSHROD)).isEqualTo("out");
  }

  @Test
  void aVisitGoesOutWithItsSlipAndComesBackByScanAndByCountAndByValue() throws IOException {
    assertThat(shop.right("shop", "new", "--job", job).lines()).containsExactly("1");
    shop.right(
        "shop", "send", "--job", job, "--visit", "1", "--wanted", "measure runout", tag(PUSHROD));
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
        "bore all eight",
        "--size",
        "3.8900",
        "--within",
        "0.0005");
    shop.right(
        "shop",
        "add",
        "--job",
        job,
        "--visit",
        "1",
        "--what",
        "main caps",
        "--count",
        "5",
        "--wanted",
        "stay with the block",
        "--do-not-lose");
    Path slip = folder.resolve("slip.pdf");
    shop.right("shop", "slip", "--job", job, "--visit", "1", "--out", slip.toString());
    assertThat(text(slip))
        .contains("measure runout", "3.8900 in, within 0.0005 in", "DO NOT LOSE", "5 main caps");
    assertThat(shop.right("shop", "back", "--job", job, tag(PUSHROD)).out()).contains("is back");
    Shop.Outcome sized =
        shop.run(
            "shop",
            "count",
            "--job",
            job,
            "--visit",
            "1",
            "--line",
            "1",
            "--pieces",
            "1",
            "--size",
            "3.8915");
    assertThat(sized.out()).contains("NOT within");
    assertThat(sized.status()).isEqualTo(1);
    shop.right("shop", "count", "--job", job, "--visit", "1", "--line", "2", "--pieces", "4");
    assertThat(shop.right("shop", "list", "--job", job, "--away").rows())
        .containsExactly(
            new String[] {"visit 1", "2", "main caps", "stay with the block", "1 of 5 away"});
  }

  private Shop.Outcome call(String words) {
    return shop.run(words.replace("JOB", "--job " + job).split(" "));
  }

  @Test
  void groundJournalsThatAreCountedBackAreTheChangeAndTheirSizeIsBought() {
    assertThat(call("shop add JOB --visit 1 --work grind-rods --count 1 --size ten").err())
        .contains("type the standard size of the rod journal first");
    assertThat(call("shop add JOB --visit 1 --work grind-rods --count 1 --size 2.2300").status())
        .isZero();
    assertThat(call("plan list JOB").out()).doesNotContain("ground");
    assertThat(call("shop count JOB --visit 1 --line 1 --pieces 1 --size 2.2299").status())
        .isZero();
    assertThat(call("plan list JOB").out()).contains("made\trod journals ground, 2.2299 in");
    assertThat(call("limit size JOB --plan rod-journal --size 2.2400 --source manual").status())
        .isZero();
    assertThat(call("decide buy JOB").out())
        .contains("16\trod shells\t0.010 in under (ten under)\trule 16");
    assertThat(call("sizes JOB").rows())
        .contains(
            new String[] {
              "cylinder 3, rod journal", "2.2400 in", "2.2299 in", "-", "0.010 in under (ten under)"
            });
  }

  @Test
  void aNewShellSaysItsSizeOrIsAskedForIt() {
    assertThat(call("limit size JOB --plan rod-journal --size 2.2400 --source manual").status())
        .isZero();
    call("plan made JOB rod-journals-ground --size 0.010in");
    Shop.Outcome unsaid = call("replace JOB --reason ground " + tag("rod 3, upper shell"));
    assertThat(unsaid.status()).isZero();
    assertThat(unsaid.err()).contains("Nobody said its size", "0.010 in under", "--size listed");
    Shop.Outcome said =
        call("replace JOB --reason ground --size listed " + tag("rod 3, lower shell"));
    assertThat(said.status()).isZero();
    assertThat(said.err()).isEmpty();
    Shop.Outcome wrong =
        call("replace JOB --reason ground --size 4lb " + tag("rod 5, lower shell"));
    assertThat(wrong.status()).isEqualTo(2);
    assertThat(wrong.err()).contains("is not a size of this part");
  }

  @Test
  void aSizeThatNobodyCanReadIsRefusedForACut() {
    Shop.Outcome wrong = call("plan made JOB rod-journals-ground --size some");
    assertThat(wrong.status()).isEqualTo(2);
    assertThat(wrong.err()).contains("\"some\" is not a size");
  }

  @Test
  void whatIsNotOnTheBenchDoesNotGoAndAVisitThatIsNotThereHasNoSlip() {
    shop.right("wash", "--job", job, "--basket", "2", tag(PUSHROD));
    Shop.Outcome refused =
        shop.run("shop", "send", "--job", job, "--visit", "1", "--wanted", "x", tag(PUSHROD));
    assertThat(refused.status()).isEqualTo(2);
    assertThat(refused.err()).contains("is off for washing");
    assertThat(shop.run("shop", "slip", "--job", job, "--visit", "9", "--out", "x.pdf").err())
        .contains("There is no visit 9.");
  }

  @Test
  void theRecordSaysInShortWhatIsOpenAndIsWritten() throws IOException {
    Path pdf = folder.resolve("record.pdf");
    Path csv = folder.resolve("record.csv");
    Shop.Outcome record =
        shop.right("record", "--job", job, "--out", pdf.toString(), "--csv", csv.toString());
    assertThat(record.lines())
        .contains("Parts taken out\t74 of 74\tnone", "Inspected or measured\t0 of 74\t74");
    assertThat(text(pdf)).contains("BUILD RECORD", "V8, odd and even banks", "NOT CHECKED");
    assertThat(csv).content().contains("NOT CHECKED", "Places to fit: 16 pushrods");
  }

  static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      return new PDFTextStripper().getText(document);
    }
  }
}
